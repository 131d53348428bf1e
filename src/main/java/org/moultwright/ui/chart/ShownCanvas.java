package org.moultwright.ui.chart;

import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.value.ObservableObjectValue;
import org.moultwright.ui.theme.Palette;

/**
 * A chart of one thing, painted anew whenever that is another; blank while there is none.
 *
 * @param <T> what is shown
 */
abstract class ShownCanvas<T> extends ChartCanvas {
    private final ObjectProperty<Optional<T>> shown = new SimpleObjectProperty<>(Optional.empty());

    ShownCanvas(ObservableObjectValue<Palette> palette) {
        super(palette);
        shown.addListener((observed, before, now) -> repaint());
    }

    public final ObjectProperty<Optional<T>> shownProperty() {
        return shown;
    }

    @Override
    final void paint(Pen pen, double width, double height) {
        shown.get().ifPresent(showing -> paint(pen, showing, width, height));
    }

    abstract void paint(Pen pen, T showing, double width, double height);
}
