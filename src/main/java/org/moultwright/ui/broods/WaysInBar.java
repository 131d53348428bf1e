package org.moultwright.ui.broods;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import javafx.scene.control.Button;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.Buttons;
import org.moultwright.ui.control.EmptyState;
import org.moultwright.ui.control.Flow;
import org.moultwright.ui.control.Sign;

/** The ways broods come to the desk, as buttons and as keys: a sac, a brood folder, the demo room. */
final class WaysInBar {
    private static final KeyCombination NEW_SAC = new KeyCodeCombination(KeyCode.N, KeyCombination.SHORTCUT_DOWN);
    private static final KeyCombination TAKE_IN = new KeyCodeCombination(KeyCode.O, KeyCombination.SHORTCUT_DOWN);
    private static final KeyCombination DEMO = new KeyCodeCombination(KeyCode.D, KeyCombination.SHORTCUT_DOWN);

    private final BroodsViewModel model;
    private final Button first;

    WaysInBar(BroodsViewModel model) {
        this.model = model;
        this.first = newSac();
    }

    /** A row for the head of the page, the usual way last, where the hand expects it. */
    HBox buttons() {
        List<Button> buttons = others();
        buttons.add(newSac());
        return new Flow(buttons.toArray(Button[]::new));
    }

    EmptyState emptyState() {
        List<Button> buttons = others();
        buttons.add(first);
        Collections.reverse(buttons);
        String sentence = model.demoRoom().isPresent()
                ? Texts.say(
                        "No broods yet. Write down a new sac, take in a brood folder, or look around in the demo room.")
                : Texts.say("No broods yet. Write down a new sac, or take in a brood folder.");
        return new EmptyState(Sign.BROODS, sentence, buttons.toArray(Button[]::new));
    }

    void takeFocus() {
        first.requestFocus();
    }

    void pressed(KeyEvent event) {
        if (NEW_SAC.match(event)) {
            model.forms().begin();
        } else if (TAKE_IN.match(event)) {
            model.takeIn().choose();
        } else if (DEMO.match(event)) {
            model.demoRoom().ifPresent(Runnable::run);
        } else {
            return;
        }
        event.consume();
    }

    private Button newSac() {
        return Buttons.primary(Texts.say("New sac"), model.forms()::begin);
    }

    private List<Button> others() {
        List<Button> buttons = new ArrayList<>();
        model.demoRoom().ifPresent(open -> buttons.add(Buttons.secondary(Texts.say("Demo room"), open)));
        buttons.add(Buttons.secondary(
                Texts.say("Take in a folder"), () -> model.takeIn().choose()));
        return buttons;
    }
}
