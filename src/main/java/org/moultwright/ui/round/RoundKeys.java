package org.moultwright.ui.round;

import java.util.List;
import java.util.Optional;
import javafx.scene.input.Clipboard;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.Keys;
import org.moultwright.ui.photo.DroppedPictures;
import org.moultwright.ui.shell.KeyHint;
import org.moultwright.workflow.Balance;

/** Leads the keys of the keyboard to the open sheet. */
final class RoundKeys {
    static final List<KeyHint> HINTS = List.of(
            new KeyHint("Enter", Texts.say("next field; on the last one, done and next tray")),
            new KeyHint("Ctrl + Enter", Texts.say("done, next tray, from anywhere")),
            new KeyHint("=", Texts.say("looked, as expected: seen and none, no counts")),
            new KeyHint("7/20", Texts.say("seven of twenty looked at")),
            new KeyHint("S", Texts.say("at least one seen")),
            new KeyHint("N", Texts.say("looked, none")),
            new KeyHint("-", Texts.say("not looked")),
            new KeyHint("D", Texts.say("dead: stage 1–5, how many if not one, then the cause")),
            new KeyHint("M", Texts.say("mould: where, then how far and what was done if not the usual")),
            new KeyHint("W C R L", Texts.say("watered, cleaned, turned, liner changed")),
            new KeyHint("J", Texts.say("jot a note")),
            new KeyHint("Ctrl + V", Texts.say("attach the picture, or the files, on the clipboard to the tray")),
            new KeyHint("P", Texts.say("the tray's photos, large")),
            new KeyHint("A", Texts.say("attach the new pictures of your folder to the tray")),
            new KeyHint("T", Texts.say("tally: each key 1–5 counts one animal; there, S turns sounds on")),
            new KeyHint("Page Up, Page Down", Texts.say("the tray before, the tray after")));

    private final RoundViewModel model;
    private final RoundView view;

    RoundKeys(RoundViewModel model, RoundView view) {
        this.model = model;
        this.view = view;
        view.addEventFilter(KeyEvent.KEY_TYPED, this::typed);
        view.addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
    }

    private void typed(KeyEvent event) {
        Optional<OpenSheet> open = model.openProperty().get();
        if (open.isEmpty() || Keys.goToText(event) || event.isShortcutDown() || event.isAltDown()) {
            return;
        }
        String typed = event.getCharacter();
        if (typed.length() == 1 && !Character.isISOControl(typed.charAt(0)) && means(open.get(), typed.charAt(0))) {
            event.consume();
        }
    }

    private boolean means(OpenSheet open, char key) {
        if (open.keys().promptProperty().get() instanceof Prompt.Explanation) {
            return explains(key) || open.keys().typed(key);
        }
        return (open.keys().isOpen() && isOfPhotos(key)) || open.keys().typed(key);
    }

    private boolean isOfPhotos(char key) {
        switch (Character.toLowerCase(key)) {
            case 'p' -> view.openPhotos();
            case 'a' -> model.photos().attachOffered();
            default -> {
                return false;
            }
        }
        return true;
    }

    /** Text on the clipboard goes where it is typed; anything else is a photo. */
    private boolean paste(KeyEvent event) {
        Clipboard board = Clipboard.getSystemClipboard();
        boolean isPhoto =
                DroppedPictures.areOn(board) && !(Keys.goToText(event) && board.hasString() && !board.hasFiles());
        if (isPhoto) {
            model.photos().attach(DroppedPictures.of(board));
        }
        return isPhoto;
    }

    private boolean explains(char key) {
        switch (Character.toLowerCase(key)) {
            case 'r' -> model.recount();
            case 'e' -> model.explain(Balance.Answer.EARLIER_MISCOUNT);
            case 'g' -> model.explain(Balance.Answer.GONE);
            default -> {
                return false;
            }
        }
        return true;
    }

    private void pressed(KeyEvent event) {
        if (model.openProperty().get().filter(open -> takes(event, open)).isPresent()) {
            event.consume();
        }
    }

    private boolean takes(KeyEvent event, OpenSheet open) {
        switch (event.getCode()) {
            case V -> {
                return event.isShortcutDown() && paste(event);
            }
            case ENTER -> {
                return enter(event, open);
            }
            case ESCAPE -> {
                open.keys().close();
                model.photos().putProblemAway();
                model.focusFirstRow();
            }
            case UP, DOWN -> {
                return !Keys.goToText(event) && view.moveFocus(event.getCode() == KeyCode.UP);
            }
            case PAGE_UP -> model.step(-1);
            case PAGE_DOWN -> model.step(1);
            case BACK_SPACE -> {
                if (!open.keys().tallies()) {
                    return false;
                }
                open.keys().takeBack();
            }
            default -> {
                return false;
            }
        }
        return true;
    }

    private boolean enter(KeyEvent event, OpenSheet open) {
        if (event.isShortcutDown()) {
            model.done();
        } else if (Keys.goToText(event)) {
            return false;
        } else if (!Keys.press(event) && !open.keys().acceptUsual() && !view.moveFocus(false)) {
            model.done();
        }
        return true;
    }
}
