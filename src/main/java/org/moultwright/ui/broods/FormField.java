package org.moultwright.ui.broods;

import java.util.OptionalInt;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** One field of a form: what is typed in it, and what is wrong with that, if anything is. */
final class FormField {
    private final String key;
    private final String name;
    private final StringProperty text = new SimpleStringProperty("");
    private final StringProperty problem = new SimpleStringProperty("");
    private Runnable check = () -> {};

    /**
     * @param key names it among what is kept of a begun form
     * @param name what it is, for people who cannot see where it stands
     */
    FormField(String key, String name) {
        this.key = key;
        this.name = name;
        text.addListener((observed, before, now) -> problem.set(""));
    }

    String key() {
        return key;
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

    /** What is looked at once the keeper has left the field with something in it. */
    void whenLeft(Runnable looked) {
        check = looked;
    }

    void left() {
        if (!isEmpty()) {
            check.run();
        }
    }

    String written() {
        return text.get().strip();
    }

    boolean isEmpty() {
        return text.get().isBlank();
    }

    void set(String words) {
        text.set(words);
    }

    /** The number written; a field for numbers takes digits only, at most five. */
    OptionalInt number() {
        return isEmpty() ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(written()));
    }

    int count() {
        return number().orElse(0);
    }
}
