package org.moultwright.device.serial;

import org.moultwright.device.DeviceException.Reason;

/** What a system's error code means when a port does not open. */
final class SerialRefusal {
    private SerialRefusal() {}

    /**
     * The reason behind a Linux error code, as in its {@code errno.h}.
     *
     * @param isThere whether the port's path exists; a port already open in this program is told as missing
     */
    static Reason of(int code, boolean isThere) {
        return switch (code) {
            case 11, 16 -> Reason.BUSY;
            case 1, 13 -> Reason.NO_PERMISSION;
            case 2 -> isThere ? Reason.BUSY : Reason.MISSING;
            case 6, 19 -> Reason.MISSING;
            case 25 -> Reason.NOT_A_SERIAL_LINE;
            default -> Reason.FAILED;
        };
    }
}
