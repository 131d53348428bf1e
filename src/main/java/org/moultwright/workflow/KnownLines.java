package org.moultwright.workflow;

import java.util.Map;

/**
 * The lines this machine listens to: where each probe was heard last, how it is read, and which it is. They
 * belong to the machine, not to the store, for so do its ports.
 */
public interface KnownLines {
    /** Nothing is listened to, and nothing kept. */
    KnownLines NONE = new KnownLines() {
        @Override
        public Map<String, ProbeLine> all() {
            return Map.of();
        }

        @Override
        public void remember(String probe, ProbeLine line) {}

        @Override
        public void forget(String probe) {}
    };

    /** Every line, by the code of its probe. Lines nobody can read any more are left out. */
    Map<String, ProbeLine> all();

    /** Keeps a probe's line in place of an earlier one; on disk when this returns. */
    void remember(String probe, ProbeLine line);

    /** The keeper no longer listens to a probe. */
    void forget(String probe);
}
