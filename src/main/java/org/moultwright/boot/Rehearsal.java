package org.moultwright.boot;

import javafx.event.Event;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.Pane;
import javafx.scene.layout.VBox;
import javafx.scene.text.Text;
import javafx.scene.text.TextFlow;
import org.moultwright.domain.Stage;
import org.moultwright.ui.control.Banner;
import org.moultwright.ui.control.Buttons;
import org.moultwright.ui.control.Card;
import org.moultwright.ui.control.Flow;
import org.moultwright.ui.control.KeyCap;
import org.moultwright.ui.control.NumberField;
import org.moultwright.ui.control.PageHeader;
import org.moultwright.ui.control.Swatch;
import org.moultwright.ui.control.ToggleChip;
import org.moultwright.ui.control.Tone;
import org.moultwright.ui.control.Words;

/**
 * Styles one of each control a first count needs, where nobody sees it. The toolkit's thread has nothing to do while the
 * store is opened; what it has learnt meanwhile, the rules of the style sheet first of all, it need not learn once the
 * keeper waits for it. What comes into the window later is not rehearsed: a desk would wait for that.
 */
final class Rehearsal {
    private static final int WIDTH = 640;

    /** Of no language, and never seen: a figure, so that typefaces are asked for one. */
    private static final String WORDS = "0";

    private Rehearsal() {}

    /**
     * On the toolkit's thread, once the language of the desk is in force.
     *
     * @param floor where the desk will stand: styles that were worked out on another are worked out anew
     */
    static void play(Pane floor) {
        Banner banner = new Banner(Tone.WARN);
        banner.sentenceProperty().set(WORDS);
        NumberField field = new NumberField(WORDS);
        VBox unseen = new VBox(
                new PageHeader(WORDS, new KeyCap(WORDS)),
                new Card(
                        Words.strong(WORDS),
                        new ToggleChip(WORDS),
                        Buttons.primary(WORDS, () -> {}),
                        Swatch.tall(Stage.EGG),
                        field),
                banner,
                new Flow(Words.muted(WORDS), new TextFlow(new Text(WORDS))));
        unseen.setManaged(false);
        unseen.setVisible(false);
        unseen.resize(WIDTH, WIDTH);
        floor.getChildren().add(0, unseen);
        unseen.applyCss();
        unseen.layout();
        // A digit typed is the first thing a keeper does.
        Event.fireEvent(
                field.input(),
                new KeyEvent(KeyEvent.KEY_TYPED, WORDS, WORDS, KeyCode.UNDEFINED, false, false, false, false));
    }
}
