package org.moultwright.workflow;

import org.moultwright.domain.Require;

/**
 * Where a probe is heard and how its lines are read.
 *
 * @param port the path or name of the serial port, such as {@code /dev/ttyUSB0} or {@code COM3}
 * @param profile the code of the line profile, with settings if any: {@code modbus-int16 address=17}
 * @param identity which probe is wanted, as it was told when it was first heard; by it the probe is found again
 *     at another port, and another probe at this port is not taken for it
 */
public record ProbeLine(String port, String profile, ProbeIdentity identity) {
    public ProbeLine {
        Require.text("port", port);
        Require.text("profile", profile);
    }

    /** Whichever probe is heard at this port first. */
    public ProbeLine(String port, String profile) {
        this(port, profile, ProbeIdentity.UNKNOWN);
    }
}
