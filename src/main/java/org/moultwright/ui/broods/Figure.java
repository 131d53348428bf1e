package org.moultwright.ui.broods;

import java.util.OptionalDouble;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import org.moultwright.language.Numbers;
import org.moultwright.language.Scale;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.Typed;

/** A number being written, and what is wrong with it, if anything is. */
final class Figure {
    private final String name;
    private final double lowest;
    private final double highest;
    private final Scale scale;
    private final StringProperty text = new SimpleStringProperty("");
    private final StringProperty problem = new SimpleStringProperty("");

    /** @param name what it is, for people who cannot see where it stands */
    Figure(String name, double lowest, double highest) {
        this(name, lowest, highest, Scale.PLAIN);
    }

    /** @param scale how what is written relates to the number; the limits are of the number */
    Figure(String name, double lowest, double highest, Scale scale) {
        this.name = name;
        this.scale = scale;
        this.lowest = lowest;
        this.highest = highest;
    }

    String name() {
        return name;
    }

    StringProperty textProperty() {
        return text;
    }

    StringProperty problemProperty() {
        return problem;
    }

    boolean isEmpty() {
        return text.get().isBlank();
    }

    void set(double value) {
        text.set(words(scale.shown(value)));
        problem.set("");
    }

    /** The number, where what is written is one within its limits; else the problem says what is wanted. */
    OptionalDouble check() {
        OptionalDouble typed = Typed.number(text.get());
        if (typed.isPresent()) {
            double value = scale.kept(typed.getAsDouble());
            if (value >= lowest && value <= highest) {
                problem.set("");
                return OptionalDouble.of(value);
            }
        }
        problem.set(
                isEmpty()
                        ? ""
                        : Texts.say(
                                "a number from {0} to {1}", words(scale.shown(lowest)), words(scale.shown(highest))));
        return OptionalDouble.empty();
    }

    static String words(double value) {
        return Numbers.shortest(value, 2);
    }
}
