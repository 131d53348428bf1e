package org.moultwright.device.serial;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.moultwright.device.link.ByteSource;
import org.moultwright.device.link.Ear;
import org.moultwright.device.link.LinkClock;
import org.moultwright.device.link.LinkThread;
import org.moultwright.device.link.LinkTiming;
import org.moultwright.device.link.Party;
import org.moultwright.device.profile.LineProfile;
import org.moultwright.device.profile.LineProfiles;
import org.moultwright.workflow.ProbeLine;
import org.moultwright.workflow.ProbeLinks;
import org.moultwright.workflow.ProbeListener;

/**
 * Probes on serial ports of this machine. A probe whose sensor tells who it is joins the others that are heard at
 * the same port with the same profile; any other has its port to itself.
 */
public final class SerialProbeLinks implements ProbeLinks {
    private final LineProfiles profiles;
    private final Path nativeFolder;
    private final LinkTiming timing;
    private final LinkClock clock;
    private final PortListing ports;
    private final Map<String, Wire> wires = new ConcurrentHashMap<>();

    /**
     * @param profiles how lines may be read
     * @param nativeFolder a folder of this user's own, where the serial library unpacks its native part
     * @param timing how patient links are
     * @param clock what the time of a line is
     */
    public SerialProbeLinks(LineProfiles profiles, Path nativeFolder, LinkTiming timing, LinkClock clock) {
        this(profiles, nativeFolder, timing, clock, new MachinePorts());
    }

    SerialProbeLinks(LineProfiles profiles, Path nativeFolder, LinkTiming timing, LinkClock clock, PortListing ports) {
        this.profiles = profiles;
        this.nativeFolder = nativeFolder;
        this.timing = timing;
        this.clock = clock;
        this.ports = ports;
    }

    @Override
    public List<String> profiles() {
        return profiles.codes();
    }

    @Override
    public Link open(ProbeLine line, ProbeListener listener) {
        LineProfile profile = profiles.find(line.profile())
                .orElseThrow(() -> new IllegalArgumentException(
                        "profile is '%s' but must be one of %s".formatted(line.profile(), profiles.codes())));
        Ear ear = new Ear(profile, listener, line.identity());
        String name = line.port() + " " + profile.choice();
        Wire there = wires.get(name);
        if (there != null
                && line.identity().isToldByTheSensor()
                && there.party().join(ear)) {
            return () -> leave(name, there, ear);
        }
        Wire wire = open(line.port(), profile, ear);
        // One that finds its port in use must not stand in for the one that uses it.
        wires.putIfAbsent(name, wire);
        return () -> leave(name, wire, ear);
    }

    private Wire open(String port, LineProfile profile, Ear ear) {
        Party party = new Party(ear);
        PortSearch search = new PortSearch(port, ports, new SerialOpening(profile.lineSettings()), party);
        ByteSource.Opening opening = () -> {
            NativeLibrary.loadFrom(nativeFolder);
            return search.open();
        };
        return new Wire(party, LinkThread.start("probe on " + port, opening, profile, party, timing, clock));
    }

    private void leave(String name, Wire wire, Ear ear) {
        if (wire.party().leave(ear)) {
            wires.remove(name, wire);
            wire.thread().close();
        }
    }

    /** A wire and those who listen to it. */
    private record Wire(Party party, LinkThread thread) {}
}
