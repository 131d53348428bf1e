package org.moultwright.device.line;

import java.util.List;

/**
 * Cuts a stream of bytes into records. Memory stays bounded whatever comes. Not safe for several threads.
 */
public interface Framer {

    /**
     * Takes in the first {@code count} bytes and gives the records they complete.
     *
     * @param nanos when they came, by a steady clock
     */
    List<Line> take(byte[] bytes, int count, long nanos);

    /** Nothing came for a moment: gives what is complete or broken off by that. */
    default List<Line> quiet(long nanos) {
        return List.of();
    }

    /** The instrument is about to be asked anew: gives what its last answer left unfinished. */
    default List<Line> asked(byte[] request) {
        return List.of();
    }
}
