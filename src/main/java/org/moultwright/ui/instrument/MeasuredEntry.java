package org.moultwright.ui.instrument;

import java.util.OptionalDouble;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import org.moultwright.language.Scale;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.Typable;
import org.moultwright.ui.control.Typed;

/** A number the keeper writes, with a point or a comma; what is wrong with it is said once the field is left. */
final class MeasuredEntry {
    /** What the field takes. */
    static final Typable TYPABLE = Typable.signedNumber(4, 4);

    private final String name;
    private final double low;
    private final double high;
    private final Scale scale;
    private final StringProperty text;
    private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");

    /**
     * @param name with its unit, such as "probe, °C"
     * @param low the least it may be
     * @param high the most
     * @param usual what stands there to begin with
     */
    MeasuredEntry(String name, double low, double high, String usual) {
        this(name, low, high, usual, Scale.PLAIN);
    }

    /** @param scale how what is written relates to the number; the limits are of the number */
    MeasuredEntry(String name, double low, double high, String usual, Scale scale) {
        this.name = name;
        this.scale = scale;
        this.low = low;
        this.high = high;
        this.text = new SimpleStringProperty(usual);
        text.addListener((observed, before, now) -> problem.set(""));
    }

    String name() {
        return name;
    }

    StringProperty textProperty() {
        return text;
    }

    ReadOnlyStringProperty problemProperty() {
        return problem.getReadOnlyProperty();
    }

    /** The number, if there is one that makes sense. */
    OptionalDouble value() {
        OptionalDouble written = written();
        return written.isPresent() && written.getAsDouble() >= low && written.getAsDouble() <= high
                ? written
                : OptionalDouble.empty();
    }

    /** The field was left: says what is wrong. A field nobody wrote in is only missing yet. */
    void left() {
        problem.set(text.get().isBlank() || value().isPresent() ? "" : sentence());
    }

    private String sentence() {
        return written().isEmpty()
                ? Texts.say("Write a number.")
                : Texts.say("Write {0} to {1}.", scale.words(low), scale.words(high));
    }

    private OptionalDouble written() {
        OptionalDouble typed = Typed.number(text.get());
        return typed.isPresent() ? OptionalDouble.of(scale.kept(typed.getAsDouble())) : typed;
    }
}
