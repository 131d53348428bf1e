package org.moultwright.ui.broods;

import java.util.ArrayList;
import java.util.List;
import javafx.beans.value.ObservableObjectValue;
import org.moultwright.language.Texts;
import org.moultwright.text.DayWords;
import org.moultwright.text.Vocabulary;
import org.moultwright.ui.control.Sign;
import org.moultwright.ui.shell.KeyHint;
import org.moultwright.ui.shell.PlainScreen;
import org.moultwright.ui.shell.Screen;
import org.moultwright.ui.shell.ScreenName;
import org.moultwright.ui.theme.Palette;
import org.moultwright.workflow.RoomReading;

/** The broods, as a screen of the frame. */
public final class BroodsScreen {
    public static final ScreenName NAME = new ScreenName("broods", Texts.say("Broods"), Sign.BROODS);

    private BroodsScreen() {}

    public static Screen of(BroodsDesk desk, ObservableObjectValue<Palette> palette) {
        BroodsView view = new BroodsView(new BroodsViewModel(desk), palette);
        return new PlainScreen(NAME, view, view::takeFocus, keys(desk));
    }

    /** What is worked out of a room for the list, best aside. */
    public static RoomReading<?> reading(Vocabulary vocabulary, DayWords days) {
        return new BroodLines(vocabulary, days);
    }

    private static List<KeyHint> keys(BroodsDesk desk) {
        List<KeyHint> keys = new ArrayList<>(List.of(
                new KeyHint("↑ ↓", Texts.say("choose a brood")),
                new KeyHint("Enter", Texts.say("look at the chosen brood closely; compare it, print it")),
                new KeyHint("← →", Texts.say("read the day before or after in words")),
                new KeyHint("Shift + ← →", Texts.say("a week before or after")),
                new KeyHint("Ctrl + T", Texts.say("the chosen brood's timing: what you believe, what was learned")),
                new KeyHint("Ctrl + N", Texts.say("write down a new sac")),
                new KeyHint("P", Texts.say("the chosen sac was taken from its mother")),
                new KeyHint("O", Texts.say("open the chosen sac")),
                new KeyHint("Ctrl + O", Texts.say("take in a brood folder"))));
        desk.waysIn()
                .demoRoom()
                .ifPresent(open -> keys.add(new KeyHint("Ctrl + D", Texts.say("look around in the demo room"))));
        return keys;
    }
}
