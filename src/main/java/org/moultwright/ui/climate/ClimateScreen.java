package org.moultwright.ui.climate;

import java.util.List;
import javafx.beans.value.ObservableObjectValue;
import javafx.scene.Node;
import org.kordamp.ikonli.materialdesign2.MaterialDesignT;
import org.moultwright.ui.shell.KeyHint;
import org.moultwright.ui.shell.PlainScreen;
import org.moultwright.ui.shell.Screen;
import org.moultwright.ui.theme.Palette;

/** The climate, as a screen of the frame. */
public final class ClimateScreen {
    private static final List<KeyHint> KEYS = List.of(
            new KeyHint("← →", "read the trace, step by step"), new KeyHint("Home, End", "its first and last instant"));

    private ClimateScreen() {}

    /**
     * The screen over a desk.
     *
     * @param writeIn leads to what is written in by hand
     */
    public static Screen of(ClimateDesk desk, ObservableObjectValue<Palette> palette, Node writeIn) {
        ClimateView view = new ClimateView(new ClimateViewModel(desk), palette, writeIn);
        return new PlainScreen("climate", "Climate", MaterialDesignT.THERMOMETER, view, view::takeFocus, KEYS);
    }
}
