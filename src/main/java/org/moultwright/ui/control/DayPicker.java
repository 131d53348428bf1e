package org.moultwright.ui.control;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.format.DateTimeParseException;
import java.time.format.ResolverStyle;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.scene.control.DatePicker;
import javafx.util.StringConverter;
import org.jspecify.annotations.Nullable;

/** A day, written as everywhere on the desk: 3 May 2026. What is typed may also be 3.5.2026, 3/5/2026 or 2026-05-03. */
public final class DayPicker extends DatePicker {
    private static final DateTimeFormatter WRITTEN = form("d MMM uuuu");
    private static final List<DateTimeFormatter> READ =
            List.of(WRITTEN, form("d MMMM uuuu"), form("d.M.uuuu"), form("d/M/uuuu"), form("uuuu-MM-dd"));

    public DayPicker(String name, ObjectProperty<@Nullable LocalDate> day) {
        setAccessibleText(name);
        getEditor().setAccessibleText(name);
        setConverter(new Written());
        valueProperty().bindBidirectional(day);
        getStyleClass().add("day-picker");
    }

    private static DateTimeFormatter form(String pattern) {
        return new DateTimeFormatterBuilder()
                .parseCaseInsensitive()
                .appendPattern(pattern)
                .toFormatter(Locale.ENGLISH)
                .withResolverStyle(ResolverStyle.STRICT);
    }

    /** Text that is no day leaves the day as it was. */
    private @Nullable LocalDate read(String text) {
        Optional<LocalDate> day =
                READ.stream().flatMap(form -> read(text.strip(), form).stream()).findFirst();
        return day.isPresent() ? day.get() : getValue();
    }

    private static Optional<LocalDate> read(String text, DateTimeFormatter form) {
        try {
            return Optional.of(LocalDate.parse(text, form));
        } catch (DateTimeParseException notInThisForm) {
            return Optional.empty();
        }
    }

    private final class Written extends StringConverter<@Nullable LocalDate> {
        @Override
        public String toString(@Nullable LocalDate day) {
            return day == null ? "" : WRITTEN.format(day);
        }

        @Override
        public @Nullable LocalDate fromString(@Nullable String text) {
            return text == null || text.isBlank() ? null : read(text);
        }
    }
}
