package org.moultwright.ui.shelf;

import java.util.List;
import javafx.scene.input.KeyEvent;
import org.moultwright.language.Texts;
import org.moultwright.ui.shell.KeyHint;

/** The keys of the shelf, while the cards have the keyboard. */
final class ShelfKeys {
    static final List<KeyHint> HINTS = List.of(
            new KeyHint("← → ↑ ↓", Texts.say("from card to card")),
            new KeyHint("M", Texts.say("move it to another place")),
            new KeyHint("S", Texts.say("split: some animals to another tray")),
            new KeyHint("I", Texts.say("isolate animals, with a reason")),
            new KeyHint("J", Texts.say("join with another tray")),
            new KeyHint("Delete", Texts.say("put an empty container away")),
            new KeyHint("A", Texts.say("add a container")),
            new KeyHint("L", Texts.say("its label, and those of all that stands in it, on a sheet you choose")),
            new KeyHint("Page Up", Texts.say("a day earlier")),
            new KeyHint("Page Down", Texts.say("a day later")),
            new KeyHint("T", Texts.say("back to tonight")));

    private static final int FAR = 100_000;

    private ShelfKeys() {}

    /** Does what a key asks for; false where it asks for nothing here. */
    static boolean pressed(KeyEvent event, ShelfViewModel model) {
        if (event.isControlDown() || event.isAltDown() || event.isMetaDown()) {
            return false;
        }
        switch (event.getCode()) {
            case LEFT -> model.along(-1);
            case RIGHT -> model.along(1);
            case UP -> model.across(-1);
            case DOWN -> model.across(1);
            case HOME -> model.along(-FAR);
            case END -> model.along(FAR);
            case M, ENTER -> model.openMove();
            case S -> model.openSplit(false);
            case I -> model.openSplit(true);
            case J -> model.openMerge();
            case DELETE -> model.putAway();
            case A -> model.openAdd();
            case L -> model.printLabels();
            case PAGE_UP -> model.step(-1);
            case PAGE_DOWN -> model.step(1);
            case T -> model.toTonight();
            case ESCAPE -> model.closeForm();
            default -> {
                return false;
            }
        }
        return true;
    }
}
