package org.moultwright.ui.label;

import java.util.Optional;

/** A machine without a printer. */
public final class NoPrinter implements SheetPrinter {
    @Override
    public boolean isThere() {
        return false;
    }

    @Override
    public Optional<Printing> choose(String title) {
        return Optional.empty();
    }
}
