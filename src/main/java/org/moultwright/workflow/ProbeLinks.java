package org.moultwright.workflow;

import java.util.List;

/** Probes that speak over a wire of this machine. */
public interface ProbeLinks {

    /** The codes of the line profiles that may be used, in order. */
    List<String> profiles();

    /**
     * Starts listening and returns at once. The link goes on through every fault of the wire until it is
     * closed; the listener is told from the link's own thread, one thing at a time.
     *
     * @throws IllegalArgumentException if there is no such profile
     */
    Link open(ProbeLine line, ProbeListener listener);

    /** A link that goes on until it is closed. */
    interface Link extends AutoCloseable {
        /** Ends the link; nothing is told once this has returned. */
        @Override
        void close();
    }
}
