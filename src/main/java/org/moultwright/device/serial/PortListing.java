package org.moultwright.device.serial;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** The serial ports that are there now. */
@FunctionalInterface
interface PortListing {
    List<PortSeen> ports();

    /**
     * A serial port.
     *
     * @param name by which it is opened
     * @param adapter maker, product and serial number of what it belongs to; empty if that has no number of its
     *     own
     */
    record PortSeen(String name, String adapter) {}

    static Set<String> names(List<PortSeen> ports) {
        return ports.stream().map(PortSeen::name).collect(Collectors.toCollection(TreeSet::new));
    }

    /** The adapter of a port, empty if it has no number of its own, or one that another adapter has too. */
    static String adapterOf(String name, List<PortSeen> ports) {
        Optional<PortSeen> port =
                ports.stream().filter(seen -> seen.name().equals(name)).findFirst();
        return port.map(PortSeen::adapter)
                .filter(adapter -> namesOf(adapter, ports).size() == 1)
                .orElse("");
    }

    /** The ports of an adapter; several if adapters share a number, as cheap ones do. */
    static List<String> namesOf(String adapter, List<PortSeen> ports) {
        return ports.stream()
                .filter(seen -> !adapter.isEmpty() && seen.adapter().equals(adapter))
                .map(PortSeen::name)
                .toList();
    }
}
