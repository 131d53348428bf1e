package org.moultwright.device.link;

import org.moultwright.device.DeviceException;

/** Bytes that come over an open wire. */
public interface ByteSource extends AutoCloseable {

    /**
     * Waits a moment for bytes.
     *
     * @return how many came, 0 if none did, -1 if the wire is gone
     */
    int read(byte[] into);

    /** Sends bytes; what cannot be sent is seen by the answer that does not come. */
    void write(byte[] bytes);

    @Override
    void close();

    /** Opens the wire. */
    @FunctionalInterface
    interface Opening {
        /**
         * The wire newly opened, found again by its name each time.
         *
         * @throws DeviceException if it cannot be
         */
        ByteSource open();
    }
}
