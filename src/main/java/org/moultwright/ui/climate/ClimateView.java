package org.moultwright.ui.climate;

import javafx.beans.value.ObservableObjectValue;
import javafx.scene.Node;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import org.moultwright.ui.finder.FinderView;
import org.moultwright.ui.instrument.CalibrationView;
import org.moultwright.ui.instrument.DisplayView;
import org.moultwright.ui.theme.Palette;

/** The climate screen: the page of traces and probes, or one of the pages it leads to in its place. */
final class ClimateView extends StackPane {
    private final ClimateViewModel model;
    private final ObservableObjectValue<Palette> palette;
    private final TracesPage traces;
    private Runnable focus;

    ClimateView(ClimateViewModel model, ObservableObjectValue<Palette> palette, Node writeIn) {
        this.model = model;
        this.palette = palette;
        this.traces = new TracesPage(
                model, palette, new TracesPage.Ways(this::calibrate, this::display, this::find, writeIn));
        this.focus = traces::takeFocus;
        getChildren().add(traces);
    }

    void takeFocus() {
        focus.run();
    }

    private void calibrate() {
        CalibrationView page = new CalibrationView(model.calibrating(this::back), palette);
        open(page, page::takeFocus);
    }

    private void display() {
        DisplayView page = new DisplayView(model.comparingDisplays(this::back), palette);
        open(page, page::takeFocus);
    }

    private void find() {
        FinderView page = new FinderView(model.finding(this::connect, this::back));
        open(page, page::takeFocus);
    }

    private void connect(String port, String form) {
        back();
        traces.connect(port, form);
    }

    private void open(Region page, Runnable takeFocus) {
        getChildren().setAll(page);
        focus = takeFocus;
        takeFocus();
    }

    private void back() {
        getChildren().setAll(traces);
        focus = traces::takeFocus;
        takeFocus();
    }
}
