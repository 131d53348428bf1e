package org.moultwright.device.serial;

import com.fazecast.jSerialComm.SerialPort;
import java.util.Arrays;
import java.util.List;

/** The serial ports of this machine. */
final class MachinePorts implements PortListing {
    /** What the library says of a port whose adapter has none. */
    private static final String NO_NUMBER = "Unknown";

    @Override
    public List<PortSeen> ports() {
        return Arrays.stream(SerialPort.getCommPorts())
                .map(port -> new PortSeen(port.getSystemPortPath(), adapter(port)))
                .toList();
    }

    private static String adapter(SerialPort port) {
        String number = port.getSerialNumber();
        return number == null || number.isBlank() || number.equals(NO_NUMBER)
                ? ""
                : "%04X:%04X:%s".formatted(port.getVendorID(), port.getProductID(), number.replaceAll("\\s", "_"));
    }
}
