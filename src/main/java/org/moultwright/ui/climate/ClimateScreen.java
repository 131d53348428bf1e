package org.moultwright.ui.climate;

import java.util.List;
import javafx.beans.value.ObservableObjectValue;
import javafx.scene.Node;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.Sign;
import org.moultwright.ui.shell.KeyHint;
import org.moultwright.ui.shell.LaterScreen;
import org.moultwright.ui.shell.PlainScreen;
import org.moultwright.ui.shell.Screen;
import org.moultwright.ui.shell.ScreenName;
import org.moultwright.ui.theme.Palette;

/** The climate, as a screen of the frame. */
public final class ClimateScreen implements AutoCloseable {
    public static final ScreenName NAME = new ScreenName("climate", Texts.say("Climate"), Sign.CLIMATE);

    private static final List<KeyHint> KEYS = List.of(
            new KeyHint("← →", Texts.say("read the trace, step by step")),
            new KeyHint("Home, End", Texts.say("its first and last instant")),
            new KeyHint("↑ ↓", Texts.say("less time and more time in the trace; the wheel does the same")),
            new KeyHint("Shift + ← →", Texts.say("earlier and later; a drag does the same")),
            new KeyHint("Page up, Page down", Texts.say("a whole stretch earlier and later")),
            new KeyHint("H", Texts.say("hold everything while you read, and go on")),
            new KeyHint("Ctrl + C", Texts.say("copy the picture of the trace")),
            new KeyHint("Ctrl + P", Texts.say("print it")));

    private final Screen screen;
    private final Runnable close;

    private ClimateScreen(Screen screen, Runnable close) {
        this.screen = screen;
        this.close = close;
    }

    /**
     * The screen over its desk; to be closed with it.
     *
     * @param writeIn leads to what is written in by hand
     */
    public static ClimateScreen of(ClimateDesk desk, ObservableObjectValue<Palette> palette, Node writeIn) {
        ClimateViewModel model = new ClimateViewModel(desk);
        return new ClimateScreen(new LaterScreen(NAME, () -> screen(model, palette, writeIn)), model::close);
    }

    private static Screen screen(ClimateViewModel model, ObservableObjectValue<Palette> palette, Node writeIn) {
        ClimateView view = new ClimateView(model, palette, writeIn);
        return new PlainScreen(NAME, view, view::takeFocus, KEYS);
    }

    public Screen screen() {
        return screen;
    }

    /** Asks every probe that is listened to to end; what was heard by then is kept. */
    @Override
    public void close() {
        close.run();
    }
}
