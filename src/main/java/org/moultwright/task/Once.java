package org.moultwright.task;

import java.util.Optional;
import java.util.function.Supplier;

/** Something made when it is first asked for, and once only, whichever threads ask. */
public final class Once<T> implements Supplier<T> {
    private final Supplier<T> maker;
    private Optional<T> made = Optional.empty();

    public Once(Supplier<T> maker) {
        this.maker = maker;
    }

    @Override
    public synchronized T get() {
        T one = made.orElseGet(maker);
        made = Optional.of(one);
        return one;
    }

    /** It, if it was ever asked for. */
    public synchronized Optional<T> made() {
        return made;
    }
}
