package org.moultwright.ui.forecast;

import java.util.List;
import javafx.beans.value.ObservableObjectValue;
import javafx.scene.Node;
import org.kordamp.ikonli.Ikon;
import org.kordamp.ikonli.materialdesign2.MaterialDesignC;
import org.moultwright.ui.shell.KeyHint;
import org.moultwright.ui.shell.Screen;
import org.moultwright.ui.theme.Palette;

/** The forecasts, as a screen of the frame. */
public final class ForecastScreen implements Screen {
    private final ForecastView view;

    public ForecastScreen(ForecastDesk desk, ObservableObjectValue<Palette> palette) {
        this.view = new ForecastView(new ForecastViewModel(desk), palette);
    }

    @Override
    public String id() {
        return "forecast";
    }

    @Override
    public String word() {
        return "Forecast";
    }

    @Override
    public Ikon icon() {
        return MaterialDesignC.CHART_TIMELINE_VARIANT;
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
        return List.of(new KeyHint("↑ ↓", "choose a tray and read its windows"));
    }
}
