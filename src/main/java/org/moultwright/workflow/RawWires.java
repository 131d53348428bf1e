package org.moultwright.workflow;

import java.util.List;

/** The serial ports of this machine, heard as they are, before anybody knows how to read what comes. */
public interface RawWires {

    /** The ports that are there now, by the names they are opened by. */
    List<String> ports();

    /** How a port may be set, such as {@code 9600 8N1}, the most usual first. */
    List<String> settings();

    /**
     * Starts listening and returns at once. Nothing is ever said over the wire.
     *
     * @param settings one of {@link #settings()}
     * @param listener is told from a thread of its own
     */
    Hearing listen(String port, String settings, Listener listener);

    /** A wire that is heard until this is closed; nothing is told once that has returned. */
    interface Hearing extends AutoCloseable {
        @Override
        void close();
    }

    /** Is told what comes. */
    interface Listener {
        /** Bytes came. */
        void heard(byte[] bytes);

        /** The port cannot be opened, or is gone; nothing more comes. */
        void ended(AdvisedException fault);
    }
}
