package org.moultwright.ui.shell;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.StackPane;
import org.moultwright.ui.control.Buttons;
import org.moultwright.ui.control.Card;
import org.moultwright.ui.control.KeyCap;
import org.moultwright.ui.control.Words;

/** The sheet of keys, laid over the open screen. */
final class KeySheet extends StackPane {
    private final Runnable close;

    KeySheet(Runnable close) {
        this.close = close;
        getStyleClass().add("key-sheet");
        setOnMouseClicked(event -> close.run());
    }

    void show(String screen, List<KeyHint> hints) {
        Button done = Buttons.secondary("Close", close);
        Card card = Card.titled("Keys", grid(ShellKeys.HINTS));
        if (!hints.isEmpty()) {
            card = Card.titled(screen + ", keys", grid(hints), Words.cardTitle("Everywhere"), grid(ShellKeys.HINTS));
        }
        card.getChildren().add(done);
        card.setMaxSize(USE_PREF_SIZE, USE_PREF_SIZE);
        getChildren().setAll(card);
        done.requestFocus();
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
