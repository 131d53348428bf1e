package org.moultwright.ui.control;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import javafx.scene.control.ChoiceBox;
import javafx.scene.input.KeyEvent;
import javafx.util.StringConverter;

/** Lets a letter choose the next value whose words begin with it, as in a list. The toolkit's choices know arrows only. */
public final class ByLetter {
    private ByLetter() {}

    /** From here on. */
    public static <T> void choose(ChoiceBox<T> choice) {
        choice.addEventHandler(KeyEvent.KEY_TYPED, event -> {
            String letter = event.getCharacter();
            // A space opens the list.
            if (!letter.isBlank() && !event.isShortcutDown() && !event.isAltDown()) {
                next(choice, letter).ifPresent(choice::setValue);
                event.consume();
            }
        });
    }

    private static <T> Optional<T> next(ChoiceBox<T> choice, String letter) {
        List<T> values = choice.getItems();
        int after = values.indexOf(choice.getValue()) + 1;
        return IntStream.range(0, values.size())
                .mapToObj(step -> values.get((after + step) % values.size()))
                .filter(value -> words(choice.getConverter(), value)
                        .toLowerCase(Locale.ROOT)
                        .startsWith(letter.toLowerCase(Locale.ROOT)))
                .findFirst();
    }

    private static <T> String words(StringConverter<T> converter, T value) {
        return converter == null ? String.valueOf(value) : converter.toString(value);
    }
}
