package org.moultwright.ui.control;

import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.beans.property.ObjectProperty;
import javafx.scene.control.DateCell;
import javafx.scene.control.DatePicker;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;
import org.jspecify.annotations.Nullable;
import org.moultwright.language.Texts;

/**
 * A day, written as everywhere on the desk: 3 May 2026. What is typed may also be 3.5.2026, 3/5/2026 or 2026-05-03. What is
 * no day is said so of, and leaves the day as it was.
 */
public final class DayPicker extends VBox {
    private static final LocalDate EXAMPLE = LocalDate.of(2026, 5, 3);
    private static final int MOST_LETTERS = 20;

    /** What is typed to be done with a day, not to mend it. */
    private static final String ENDS = "\r\n\t";

    private final DatePicker input = new DatePicker();
    private final Beneath beneath = new Beneath(this, input, input.getEditor());
    private Supplier<LocalDate> last = () -> LocalDate.MAX;

    public DayPicker(String name, ObjectProperty<@Nullable LocalDate> day) {
        input.setAccessibleText(name);
        input.getEditor().setAccessibleText(name);
        input.setConverter(new Written());
        input.valueProperty().bindBidirectional(day);
        input.valueProperty().addListener((observed, before, now) -> say(""));
        input.getStyleClass().add("day-picker");
        input.addEventFilter(KeyEvent.KEY_TYPED, typed -> {
            if (!ENDS.contains(typed.getCharacter())) {
                say("");
            }
        });
    }

    /** The picker itself, for keys and what stands in it while there is no day. */
    public DatePicker input() {
        return input;
    }

    /** Takes no day after the last; one that is written is said so of. */
    public DayPicker upTo(Supplier<LocalDate> lastDay) {
        last = lastDay;
        input.setDayCellFactory(picker -> new DateCell() {
            @Override
            public void updateItem(LocalDate shown, boolean empty) {
                super.updateItem(shown, empty);
                setDisable(empty || shown.isAfter(last.get()));
            }
        });
        return this;
    }

    public void takeFocus() {
        input.requestFocus();
    }

    private @Nullable LocalDate read(String text) {
        Optional<LocalDate> day = WrittenDay.read(text);
        String wrong = day.map(this::against)
                .orElseGet(() ->
                        Texts.say("'{0}' is no day. Write {1}, or {2}.", named(text), WrittenDay.of(EXAMPLE), EXAMPLE));
        say(wrong);
        return wrong.isEmpty() ? day.orElseThrow() : input.getValue();
    }

    private String against(LocalDate day) {
        return day.isAfter(last.get()) ? Texts.say("That day is yet to come. Choose today or an earlier one.") : "";
    }

    private void say(String sentence) {
        beneath.say(sentence);
        beneath.mark(sentence);
    }

    private static String named(String text) {
        return text.length() <= MOST_LETTERS ? text : text.substring(0, MOST_LETTERS) + "…";
    }

    private final class Written extends StringConverter<@Nullable LocalDate> {
        @Override
        public String toString(@Nullable LocalDate day) {
            return day == null ? "" : WrittenDay.of(day);
        }

        @Override
        public @Nullable LocalDate fromString(@Nullable String text) {
            if (text == null || text.isBlank()) {
                say("");
                return null;
            }
            return read(text);
        }
    }
}
