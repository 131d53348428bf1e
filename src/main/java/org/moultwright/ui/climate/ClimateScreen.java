package org.moultwright.ui.climate;

import java.util.List;
import javafx.beans.value.ObservableObjectValue;
import javafx.scene.Node;
import org.kordamp.ikonli.Ikon;
import org.kordamp.ikonli.materialdesign2.MaterialDesignT;
import org.moultwright.ui.shell.KeyHint;
import org.moultwright.ui.shell.Screen;
import org.moultwright.ui.theme.Palette;

/** The climate, as a screen of the frame. */
public final class ClimateScreen implements Screen {
    private final ClimateView view;

    public ClimateScreen(ClimateDesk desk, ObservableObjectValue<Palette> palette) {
        this.view = new ClimateView(new ClimateViewModel(desk), palette);
    }

    @Override
    public String id() {
        return "climate";
    }

    @Override
    public String word() {
        return "Climate";
    }

    @Override
    public Ikon icon() {
        return MaterialDesignT.THERMOMETER;
    }

    @Override
    public Node node() {
        return view;
    }

    @Override
    public void shown() {
        view.takeFocus();
    }

    @Override
    public List<KeyHint> keys() {
        return List.of(
                new KeyHint("← →", "read the trace, step by step"),
                new KeyHint("Home, End", "its first and last instant"));
    }
}
