package org.moultwright.domain;

/** What was seen of one stage when the keeper looked at a tray. */
public sealed interface Look {

    /** The name this sort of look has in files and in the store. */
    String key();

    /** Whether at least one animal of the stage was seen. */
    default boolean showsAny() {
        return this instanceof Seen
                || (this instanceof Full full && full.count() > 0)
                || (this instanceof Sample sample && sample.count() > 0);
    }

    /** All animals of the stage were counted. */
    record Full(int count) implements Look {
        public Full {
            Require.atLeast("count", count, 0);
        }

        @Override
        public String key() {
            return "full";
        }
    }

    /** Some animals of the tray were looked at, and this many of them were of the stage. */
    record Sample(int count, int of) implements Look {
        public Sample {
            Require.atLeast("count", count, 0);
            Require.atLeast("of", of, Math.max(1, count));
        }

        @Override
        public String key() {
            return "sample";
        }
    }

    /** At least one was seen. */
    record Seen() implements Look {
        @Override
        public String key() {
            return "seen";
        }
    }

    /** The keeper looked and there was none. */
    record None() implements Look {
        @Override
        public String key() {
            return "none";
        }
    }

    /** Nobody looked; written nowhere, it only says so on a sheet. */
    record NotLooked() implements Look {
        @Override
        public String key() {
            return "not looked";
        }
    }
}
