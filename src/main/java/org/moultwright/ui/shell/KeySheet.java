package org.moultwright.ui.shell;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.Buttons;
import org.moultwright.ui.control.Card;
import org.moultwright.ui.control.Columns;
import org.moultwright.ui.control.KeyCap;
import org.moultwright.ui.control.MovingKeys;
import org.moultwright.ui.control.Scrolled;
import org.moultwright.ui.control.Words;

/** The sheet of keys, laid over the open screen. */
final class KeySheet extends OverSheet {
    private final Supplier<Optional<Screen>> current;

    /** @param current the screen whose keys are told beside those that work everywhere */
    KeySheet(Supplier<Optional<Screen>> current) {
        this.current = current;
    }

    @Override
    protected void opened() {
        Button done = Buttons.secondary(Texts.say("Close"), this::close);
        Columns keys = current.get()
                .filter(screen -> !screen.keys().isEmpty())
                .map(screen -> new Columns(
                        part(Texts.say("{0}, keys", screen.name().word()), screen.keys()),
                        part(Texts.say("Everywhere"), ShellKeys.HINTS)))
                .orElseGet(() -> new Columns(part(Texts.say("Keys"), ShellKeys.HINTS)));
        keys.getStyleClass().add("card-columns");
        Scrolled scrolled = new Scrolled(Texts.say("Keys"), keys);
        MovingKeys.of(done, scrolled);
        Card card = new Card(scrolled, done);
        card.setMaxSize(USE_PREF_SIZE, USE_PREF_SIZE);
        getChildren().setAll(card);
        done.requestFocus();
    }

    private static VBox part(String title, List<KeyHint> hints) {
        VBox part = new VBox(Words.cardTitle(title), grid(hints));
        part.getStyleClass().add("key-part");
        return part;
    }

    private static Node grid(List<KeyHint> hints) {
        GridPane grid = new GridPane();
        grid.getStyleClass().add("key-grid");
        for (int i = 0; i < hints.size(); i++) {
            grid.addRow(
                    i, new KeyCap(hints.get(i).key()), Words.plain(hints.get(i).does()));
        }
        return grid;
    }
}
