package org.moultwright.device.serial;

import java.nio.file.Path;
import java.util.List;
import org.moultwright.device.link.ByteSource;
import org.moultwright.device.link.Ear;
import org.moultwright.device.link.LinkThread;
import org.moultwright.device.link.LinkTiming;
import org.moultwright.device.profile.LineProfile;
import org.moultwright.device.profile.LineProfiles;
import org.moultwright.workflow.ProbeLine;
import org.moultwright.workflow.ProbeLinks;
import org.moultwright.workflow.ProbeListener;

/** Probes on serial ports of this machine. */
public final class SerialProbeLinks implements ProbeLinks {
    private final LineProfiles profiles;
    private final Path nativeFolder;
    private final LinkTiming timing;
    private final PortListing ports;

    /**
     * @param profiles how lines may be read
     * @param nativeFolder a folder of this user's own, where the serial library unpacks its native part
     * @param timing how patient links are
     */
    public SerialProbeLinks(LineProfiles profiles, Path nativeFolder, LinkTiming timing) {
        this(profiles, nativeFolder, timing, new MachinePorts());
    }

    SerialProbeLinks(LineProfiles profiles, Path nativeFolder, LinkTiming timing, PortListing ports) {
        this.ports = ports;
        this.profiles = profiles;
        this.nativeFolder = nativeFolder;
        this.timing = timing;
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
        PortSearch search = new PortSearch(line.port(), ports, new SerialOpening(profile.lineSettings()), ear);
        ByteSource.Opening opening = () -> {
            NativeLibrary.loadFrom(nativeFolder);
            return search.open();
        };
        return LinkThread.start("probe on " + line.port(), opening, profile, ear, timing);
    }
}
