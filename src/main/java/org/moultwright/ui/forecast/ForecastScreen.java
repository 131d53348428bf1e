package org.moultwright.ui.forecast;

import java.util.List;
import javafx.beans.value.ObservableObjectValue;
import javafx.scene.Node;
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

/** The forecast, as a screen of the frame. */
public final class ForecastScreen {
    public static final ScreenName NAME = new ScreenName("forecast", Texts.say("Forecast"), Sign.FORECAST);

    private static final List<KeyHint> KEYS = List.of(
            new KeyHint("↑ ↓", Texts.say("choose a tray and read its windows")),
            new KeyHint("Ctrl + G", Texts.say("how good the dates of completed broods were")),
            new KeyHint("Tab", Texts.say("go on to what stands beneath the lanes")),
            new KeyHint("← →", Texts.say("on the slider: try a set-point a tenth of a degree lower or higher")),
            new KeyHint("Home End", Texts.say("on the slider: try the lowest or highest set-point")),
            new KeyHint("Esc", Texts.say("on the slider: back to as it is")));

    private ForecastScreen() {}

    /** What is worked out of a room for the lanes, best aside. */
    public static RoomReading<?> reading(Vocabulary vocabulary, DayWords days) {
        return new LaneLines(vocabulary, days);
    }

    /**
     * The screen over its desk.
     *
     * @param tools what else can be done with the forecast, beside the choice of what stands beneath the lanes
     */
    public static Screen of(ForecastDesk desk, ObservableObjectValue<Palette> palette, Node... tools) {
        ForecastView view = new ForecastView(new ForecastViewModel(desk), palette, tools);
        return new PlainScreen(NAME, view, view::takeFocus, KEYS);
    }
}
