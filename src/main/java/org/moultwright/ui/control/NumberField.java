package org.moultwright.ui.control;

import java.util.OptionalInt;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;

/** A field for a count: digits only, large, right-aligned; empty is a value of its own. */
public final class NumberField extends EntryField {
    private static final Typable UP_TO_FIVE_DIGITS = Typable.wholeNumber(5);

    private final ObjectProperty<OptionalInt> value = new SimpleObjectProperty<>(OptionalInt.empty());

    public NumberField(String name) {
        super(name, UP_TO_FIVE_DIGITS);
        textProperty().addListener((observed, before, now) -> value.set(parse(now)));
        value.addListener((observed, before, now) -> write(now));
    }

    public ObjectProperty<OptionalInt> valueProperty() {
        return value;
    }

    /** Leaves text like 007 alone while it says the same number. */
    private void write(OptionalInt number) {
        if (!parse(textProperty().get()).equals(number)) {
            textProperty().set(number.isPresent() ? Integer.toString(number.getAsInt()) : "");
        }
    }

    private static OptionalInt parse(String digits) {
        return digits.isEmpty() ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(digits));
    }
}
