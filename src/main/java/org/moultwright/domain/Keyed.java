package org.moultwright.domain;

import java.util.Arrays;
import java.util.Optional;

/** Something stored and written by a key of its own that never changes. */
public interface Keyed {
    String key();

    /** The one of these with a key. */
    static <E extends Keyed> Optional<E> find(E[] values, String key) {
        return Arrays.stream(values).filter(value -> value.key().equals(key)).findFirst();
    }
}
