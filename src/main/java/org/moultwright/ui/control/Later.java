package org.moultwright.ui.control;

import java.util.Optional;
import java.util.function.Supplier;

/** What is made when it is first asked for, once. */
public final class Later<T> {
    private final Supplier<T> maker;
    private Optional<T> made = Optional.empty();

    public Later(Supplier<T> maker) {
        this.maker = maker;
    }

    public T get() {
        T now = made.orElseGet(maker);
        made = Optional.of(now);
        return now;
    }

    /** It, if it was ever asked for. */
    public Optional<T> made() {
        return made;
    }
}
