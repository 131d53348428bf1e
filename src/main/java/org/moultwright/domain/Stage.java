package org.moultwright.domain;

import java.util.Arrays;
import java.util.Optional;

/**
 * A stage between the egg and the first free-living animal, in the order an animal passes them.
 *
 * <p>Stored by {@link #key()}, shown through a vocabulary the keeper chooses. {@link #DARKENED} is a
 * visible cue inside the first instar, counted apart because it foretells the moult.
 */
public enum Stage {
    EGG("egg"),
    POSTEMBRYO("postembryo"),
    INSTAR1("instar1"),
    DARKENED("darkened"),
    INSTAR2("instar2");

    private final String key;

    Stage(String key) {
        this.key = key;
    }

    /** The name this stage has in files and in the store; it never changes. */
    public String key() {
        return key;
    }

    /** Whether an animal in this stage has already entered {@code other}. */
    public boolean isAtLeast(Stage other) {
        return compareTo(other) >= 0;
    }

    /** The stage stored under this key, if there is one. */
    public static Optional<Stage> fromKey(String key) {
        return Arrays.stream(values()).filter(stage -> stage.key.equals(key)).findFirst();
    }
}
