package org.moultwright.boot.machine;

import java.nio.file.Path;
import org.moultwright.device.link.LinkClock;
import org.moultwright.device.link.LinkTiming;
import org.moultwright.device.profile.LineProfiles;
import org.moultwright.device.serial.SerialProbeLinks;
import org.moultwright.device.serial.SerialRawWires;
import org.moultwright.workflow.LineForms;
import org.moultwright.workflow.ProbeLinks;
import org.moultwright.workflow.RawWires;

/** The serial probes of this machine, as every part of the program uses them. A profile saved is usable at once. */
public final class SerialLines {
    private final LineProfiles profiles;
    private final Path nativeFolder = DataFolders.cache().resolve("serial");

    /** @param profilesFolder where the keeper's line profiles are */
    public SerialLines(Path profilesFolder) {
        this.profiles = LineProfiles.withKeepers(profilesFolder);
    }

    /** Those of this user. */
    public static SerialLines usual() {
        return new SerialLines(DataFolders.profiles());
    }

    public ProbeLinks links() {
        return new SerialProbeLinks(profiles, nativeFolder, LinkTiming.USUAL, LinkClock.SYSTEM);
    }

    public LineForms forms() {
        return profiles;
    }

    public RawWires wires() {
        return new SerialRawWires(nativeFolder);
    }
}
