package org.moultwright.ui.takealong;

import java.util.List;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.Buttons;
import org.moultwright.ui.control.Flow;
import org.moultwright.ui.control.Words;

/** A tray in a sitter's list. It stays where it is, and as high, when something is written of it. */
final class SitterRow extends Flow {
    private final Label place = Words.muted("");
    private final Label alive = Words.muted("");
    private final Label expected = Words.wrapped(Words.plain(""));
    private final Label today = Words.wrapped(Words.strong(""));
    private final Button dead;
    private SitterTray tray;

    SitterRow(SitterTray tray, SitterViewModel model) {
        this.tray = tray;
        Flow title = new Flow(Words.whole(Words.styled(tray.tray(), "tray-name")), place, alive);
        title.getStyleClass().add("sheet-title");
        VBox words = new VBox(title, expected, today);
        HBox.setHgrow(words, Priority.ALWAYS);
        dead = deed(Texts.say("One dead"), Texts.say("one animal found dead"), () -> model.dead(this.tray));
        getChildren()
                .addAll(
                        words,
                        dead,
                        deed(Texts.say("Water given"), Texts.say("water given"), () -> model.watered(this.tray)));
        getStyleClass().addAll("card", "sitter-row");
        show(tray);
    }

    /** Whether it is of this tray, whatever its figures. */
    boolean isOf(SitterTray other) {
        return other.isOf(tray.view().brood(), tray.tray());
    }

    void show(SitterTray now) {
        tray = now;
        place.setText(now.view().place());
        alive.setText(Texts.say("{0} alive", now.view().alive()));
        expected.setText(now.expected());
        today.setText(now.today());
        dead.setDisable(now.view().alive() == 0);
    }

    private Button deed(String word, String accessible, Runnable action) {
        Button button = Buttons.secondary(word, action);
        button.setAccessibleText(String.join(", ", List.of(tray.tray(), accessible)));
        button.getStyleClass().add("sitter-deed");
        return button;
    }
}
