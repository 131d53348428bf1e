package org.moultwright.device.serial;

import com.fazecast.jSerialComm.SerialPort;
import com.fazecast.jSerialComm.SerialPortInvalidPortException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.moultwright.device.DeviceException;
import org.moultwright.device.DeviceException.Reason;
import org.moultwright.device.link.ByteSource;
import org.moultwright.device.profile.LineSettings;
import org.moultwright.language.Texts;

/** Opens a serial port by its name, each time as a new port: a name can come to mean another device. */
final class SerialOpening {
    private static final int READ_MILLIS = 200;

    private final LineSettings settings;

    SerialOpening(LineSettings settings) {
        this.settings = settings;
    }

    /**
     * The port newly opened.
     *
     * @throws DeviceException if it cannot be
     */
    ByteSource open(String name) {
        SerialPort port = find(name);
        port.setComPortParameters(settings.baud(), settings.dataBits(), stopBits(), parity());
        port.setFlowControl(SerialPort.FLOW_CONTROL_DISABLED);
        port.setComPortTimeouts(SerialPort.TIMEOUT_READ_SEMI_BLOCKING, READ_MILLIS, 0);
        port.setDTRandRTS(settings.raiseDtr(), false);
        if (!port.openPort(0)) {
            throw refusal(name, port.getLastErrorCode());
        }
        return new SerialSource(port);
    }

    private static SerialPort find(String name) {
        try {
            return SerialPort.getCommPort(name);
        } catch (SerialPortInvalidPortException e) {
            throw new DeviceException(Reason.MISSING, Texts.say("There is no port {0}.", name), e);
        }
    }

    private static DeviceException refusal(String name, int code) {
        return switch (SerialRefusal.of(code, Files.exists(Path.of(name)))) {
            case BUSY -> new DeviceException(Reason.BUSY, Texts.say("The port {0} is in use.", name));
            case NO_PERMISSION ->
                new DeviceException(Reason.NO_PERMISSION, Texts.say("You may not use the port {0}.", name));
            case MISSING -> new DeviceException(Reason.MISSING, Texts.say("There is no port {0}.", name));
            case NOT_A_SERIAL_LINE ->
                new DeviceException(Reason.NOT_A_SERIAL_LINE, Texts.say("{0} is no serial port.", name));
            case FAILED, STRANGER ->
                new DeviceException(
                        Reason.FAILED, Texts.say("The port {0} cannot be opened (system code {1}).", name, code));
        };
    }

    private int stopBits() {
        return settings.stopBits() == 2 ? SerialPort.TWO_STOP_BITS : SerialPort.ONE_STOP_BIT;
    }

    private int parity() {
        return switch (settings.parity()) {
            case N -> SerialPort.NO_PARITY;
            case O -> SerialPort.ODD_PARITY;
            case E -> SerialPort.EVEN_PARITY;
        };
    }

    private record SerialSource(SerialPort port) implements ByteSource {
        @Override
        public int read(byte[] into) {
            return port.readBytes(into, into.length);
        }

        @Override
        public void write(byte[] bytes) {
            port.writeBytes(bytes, bytes.length);
        }

        @Override
        public void close() {
            port.closePort();
        }
    }
}
