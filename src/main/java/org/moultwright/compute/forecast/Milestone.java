package org.moultwright.compute.forecast;

import java.util.Arrays;
import java.util.Optional;

/** The passes of a tray that have a date of their own. */
public enum Milestone {
    FIRST("first"),
    HALF("half"),
    MOST("most");

    private final String key;

    Milestone(String key) {
        this.key = key;
    }

    /** The name this milestone has in files and in the store; it never changes. */
    public String key() {
        return key;
    }

    /** The milestone stored under this key, if there is one. */
    public static Optional<Milestone> fromKey(String key) {
        return Arrays.stream(values())
                .filter(milestone -> milestone.key.equals(key))
                .findFirst();
    }

    /** Which pass it is, of so many that come in the end. */
    int rank(int finallyPassed) {
        return switch (this) {
            case FIRST -> 1;
            case HALF -> (int) Math.ceil(0.5 * finallyPassed);
            case MOST -> (int) Math.ceil(0.95 * finallyPassed);
        };
    }
}
