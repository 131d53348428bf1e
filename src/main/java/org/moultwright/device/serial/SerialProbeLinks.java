package org.moultwright.device.serial;

import java.nio.file.Path;
import java.util.List;
import org.moultwright.device.link.ByteSource;
import org.moultwright.device.link.LinkThread;
import org.moultwright.device.link.LinkTiming;
import org.moultwright.device.link.Transcript;
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

    /**
     * @param profiles how lines may be read
     * @param nativeFolder a folder of this user's own, where the serial library unpacks its native part
     * @param timing how patient links are
     */
    public SerialProbeLinks(LineProfiles profiles, Path nativeFolder, LinkTiming timing) {
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
        SerialOpening port = new SerialOpening(line.port(), profile.lineSettings());
        ByteSource.Opening opening = () -> {
            NativeLibrary.loadFrom(nativeFolder);
            return port.open();
        };
        return LinkThread.start("probe on " + line.port(), opening, new Transcript(profile), listener, timing);
    }
}
