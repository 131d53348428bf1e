package org.moultwright.boot.machine;

import java.nio.file.Path;
import org.moultwright.device.link.LinkTiming;
import org.moultwright.device.profile.LineProfiles;
import org.moultwright.device.serial.SerialProbeLinks;
import org.moultwright.workflow.ProbeLinks;

/** The serial probes of this machine, as every part of the program uses them. */
public final class SerialLines {
    private SerialLines() {}

    public static ProbeLinks links() {
        Path nativeFolder = DataFolders.cache().resolve("serial");
        return new SerialProbeLinks(LineProfiles.withKeepers(DataFolders.profiles()), nativeFolder, LinkTiming.USUAL);
    }
}
