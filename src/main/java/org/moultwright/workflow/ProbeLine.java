package org.moultwright.workflow;

import org.moultwright.domain.Require;

/**
 * Where a probe is heard and how its lines are read.
 *
 * @param port the path or name of the serial port, such as {@code /dev/ttyUSB0} or {@code COM3}
 * @param profile the code of the line profile
 */
public record ProbeLine(String port, String profile) {
    public ProbeLine {
        Require.text("port", port);
        Require.text("profile", profile);
    }
}
