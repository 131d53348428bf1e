package org.moultwright.boot;

import javafx.collections.FXCollections;
import javafx.event.Event;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.ListView;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.VBox;
import javafx.scene.text.Text;
import javafx.scene.text.TextFlow;
import org.moultwright.domain.Stage;
import org.moultwright.ui.control.Banner;
import org.moultwright.ui.control.Buttons;
import org.moultwright.ui.control.Card;
import org.moultwright.ui.control.Flow;
import org.moultwright.ui.control.KeyCap;
import org.moultwright.ui.control.NoteArea;
import org.moultwright.ui.control.NumberField;
import org.moultwright.ui.control.PageHeader;
import org.moultwright.ui.control.Swatch;
import org.moultwright.ui.control.ToggleChip;
import org.moultwright.ui.control.Tone;
import org.moultwright.ui.control.Words;
import org.moultwright.ui.theme.Appearance;

/**
 * Styles one of each control the first screen has, where nobody sees it. The toolkit's thread has nothing to do while
 * the store is opened; what it has learnt meanwhile, the rules of the style sheet first of all, it need not learn once
 * the keeper waits for it.
 */
final class Rehearsal {
    private static final int WIDTH = 640;

    /** Of no language, and never seen: a figure, so that typefaces are asked for one. */
    private static final String WORDS = "0";

    private Rehearsal() {}

    /** On the toolkit's thread, once the language of the desk is in force. */
    static void play() {
        Banner banner = new Banner(Tone.WARN);
        banner.sentenceProperty().set(WORDS);
        NumberField field = new NumberField(WORDS);
        Card card = new Card(
                Words.strong(WORDS),
                new ToggleChip(WORDS),
                Buttons.primary(WORDS, () -> {}),
                Swatch.tall(Stage.EGG),
                field);
        Parent root = new VBox(
                new PageHeader(WORDS, new KeyCap(WORDS)),
                card,
                banner,
                new ScrollPane(new NoteArea(WORDS, WORDS)),
                new ListView<>(FXCollections.observableArrayList(WORDS)),
                new Flow(Words.muted(WORDS), new TextFlow(new Text(WORDS))));
        Scene scene = new Scene(root, WIDTH, WIDTH);
        new Appearance().dress(scene.getStylesheets());
        root.applyCss();
        root.layout();
        // A digit typed is the first thing a keeper does.
        Event.fireEvent(
                field.input(),
                new KeyEvent(KeyEvent.KEY_TYPED, WORDS, WORDS, KeyCode.UNDEFINED, false, false, false, false));
    }
}
