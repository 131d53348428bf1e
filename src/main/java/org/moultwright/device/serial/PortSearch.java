package org.moultwright.device.serial;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.moultwright.device.DeviceException;
import org.moultwright.device.link.ByteSource;
import org.moultwright.device.link.Party;
import org.moultwright.language.Texts;
import org.moultwright.workflow.ProbeIdentity;

/**
 * Opens the port a probe is at, wherever it was plugged in.
 *
 * <p>An adapter with a number of its own is found by that; its old port is not opened if it belongs to another
 * adapter by now. A probe whose sensor tells who it is is looked for at the ports that appeared since its own was
 * opened: whether it is the one is seen by what is heard. No port that was there all the time is opened to look.
 */
final class PortSearch implements ByteSource.Opening {
    private final PortListing listing;
    private final SerialOpening opening;
    private final Party party;

    /** Ports that are known to be something else. */
    private final Set<String> notIt = new HashSet<>();

    private String home;
    private String tried = "";
    private String opened = "";
    private Set<String> thereWhenOpened = Set.of();
    private String adapterWhenOpened = "";
    private String adapter = "";

    PortSearch(String named, PortListing listing, SerialOpening opening, Party party) {
        this.home = named;
        this.listing = listing;
        this.opening = opening;
        this.party = party;
    }

    @Override
    public ByteSource open() {
        List<PortListing.PortSeen> ports = listing.ports();
        learn(PortListing.names(ports));
        tried = next(ports);
        ByteSource source = opening.open(tried);
        // It may have been plugged in after the ports were looked at.
        String adapterNow = PortListing.adapterOf(tried, listing.ports());
        if (isStranger(adapterNow)) {
            source.close();
            throw stranger(tried, adapterNow);
        }
        opened = tried;
        thereWhenOpened = PortListing.names(ports);
        adapterWhenOpened = adapterNow;
        party.opened(adapterWhenOpened);
        return source;
    }

    /** What came of the last try. */
    private void learn(Set<String> there) {
        if (tried.isEmpty()) {
            notIt.addAll(there);
        } else if (!opened.isEmpty() && party.hasHeardOwn()) {
            home = opened;
            notIt.clear();
            notIt.addAll(thereWhenOpened);
            adapter = adapterWhenOpened;
        } else if (!opened.isEmpty() && !opened.equals(home)) {
            notIt.add(opened);
        }
        opened = "";
        // A name that went away may come back as another port.
        notIt.retainAll(there);
    }

    private String next(List<PortListing.PortSeen> ports) {
        List<String> itsPorts = PortListing.namesOf(itsAdapter(), ports);
        if (!itsPorts.isEmpty()) {
            return itsPorts.contains(home) ? home : itsPorts.get(0);
        }
        if (isKnownByWhatIsHeard()) {
            return newcomer(PortListing.names(ports));
        }
        String there = PortListing.adapterOf(home, ports);
        if (isStranger(there)) {
            throw stranger(home, there);
        }
        return home;
    }

    private String itsAdapter() {
        String wanted = party.identity().adapter();
        return wanted.isEmpty() ? adapter : wanted;
    }

    private boolean isKnownByWhatIsHeard() {
        ProbeIdentity wanted = party.identity();
        return !wanted.sensor().isEmpty()
                || (itsAdapter().isEmpty() && !wanted.address().isEmpty());
    }

    private boolean isStranger(String there) {
        String its = itsAdapter();
        return !isKnownByWhatIsHeard() && !its.isEmpty() && !there.isEmpty() && !there.equals(its);
    }

    private DeviceException stranger(String port, String there) {
        return new DeviceException(
                DeviceException.Reason.STRANGER,
                Texts.say("The port {0} belongs to the adapter {1}; wanted is {2}.", port, there, itsAdapter()));
    }

    /** A port that appeared since, in turn with the old one. */
    private String newcomer(Set<String> there) {
        return there.stream()
                .filter(name -> !notIt.contains(name) && !name.equals(home) && !name.equals(tried))
                .findFirst()
                .orElse(home);
    }
}
