package org.moultwright.ui.control;

import java.time.LocalDate;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.scene.control.DatePicker;
import javafx.util.StringConverter;
import org.jspecify.annotations.Nullable;

/** A day, written as everywhere on the desk: 3 May 2026. What is typed may also be 3.5.2026, 3/5/2026 or 2026-05-03. */
public final class DayPicker extends DatePicker {
    public DayPicker(String name, ObjectProperty<@Nullable LocalDate> day) {
        setAccessibleText(name);
        getEditor().setAccessibleText(name);
        setConverter(new Written());
        valueProperty().bindBidirectional(day);
        getStyleClass().add("day-picker");
    }

    /** Text that is no day leaves the day as it was. */
    private @Nullable LocalDate read(String text) {
        Optional<LocalDate> day = WrittenDay.read(text);
        return day.isPresent() ? day.get() : getValue();
    }

    private final class Written extends StringConverter<@Nullable LocalDate> {
        @Override
        public String toString(@Nullable LocalDate day) {
            return day == null ? "" : WrittenDay.of(day);
        }

        @Override
        public @Nullable LocalDate fromString(@Nullable String text) {
            return text == null || text.isBlank() ? null : read(text);
        }
    }
}
