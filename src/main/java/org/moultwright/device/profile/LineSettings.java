package org.moultwright.device.profile;

import org.moultwright.domain.Require;

/**
 * How the port is set.
 *
 * @param baud symbols a second
 * @param dataBits bits a character, 5 to 8
 * @param parity the check bit of a character
 * @param stopBits 1 or 2
 * @param raiseDtr whether to raise the line DTR. Many boards restart when it rises, so it stays down
 *     unless an instrument needs it
 */
public record LineSettings(int baud, int dataBits, Parity parity, int stopBits, boolean raiseDtr) {

    /** The check bit of a character. */
    public enum Parity {
        N,
        O,
        E
    }

    public LineSettings {
        Require.within("baud", baud, 50, 4_000_000);
        Require.within("dataBits", dataBits, 5, 8);
        Require.within("stopBits", stopBits, 1, 2);
    }
}
