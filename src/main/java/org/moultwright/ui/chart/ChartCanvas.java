package org.moultwright.ui.chart;

import javafx.beans.InvalidationListener;
import javafx.beans.WeakInvalidationListener;
import javafx.beans.value.ObservableObjectValue;
import javafx.scene.AccessibleRole;
import javafx.scene.canvas.Canvas;
import javafx.scene.layout.Region;
import org.moultwright.ui.control.Em;
import org.moultwright.ui.theme.Palette;
import org.moultwright.ui.theme.Token;

/**
 * A canvas as large as its region, painted anew when its size, the theme, the size of text or what it shows
 * changes. It shows the focus when it has it.
 */
abstract class ChartCanvas extends Region {
    private static final double FOCUS_WIDTH_PIXELS = 3;

    private final ObservableObjectValue<Palette> palette;
    private final Canvas canvas = new Canvas();
    private final Em type = new Em();
    /** Held here because the palette outlives charts and knows them weakly. */
    private final InvalidationListener changed = observed -> repaint();

    ChartCanvas(ObservableObjectValue<Palette> palette) {
        this.palette = palette;
        canvas.setManaged(false);
        getChildren().addAll(type, canvas);
        palette.addListener(new WeakInvalidationListener(changed));
        type.fontProperty().addListener(changed);
        focusedProperty().addListener(changed);
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        setMinSize(0, 0);
    }

    /** Paints all of it. */
    abstract void paint(Pen pen, double width, double height);

    /** Something it shows has changed. */
    final void repaint() {
        requestLayout();
    }

    /** The size of running text, in pixels. */
    final double em() {
        return type.pixels();
    }

    @Override
    protected void layoutChildren() {
        double width = getWidth();
        double height = getHeight();
        canvas.setWidth(width);
        canvas.setHeight(height);
        canvas.getGraphicsContext2D().clearRect(0, 0, width, height);
        if (width <= 0 || height <= 0) {
            return;
        }
        Pen pen = new Pen(canvas.getGraphicsContext2D(), palette.get(), em());
        paint(pen, width, height);
        if (isFocused()) {
            double inset = FOCUS_WIDTH_PIXELS / 2;
            pen.frame(
                    pen.colour(Token.ACCENT),
                    FOCUS_WIDTH_PIXELS,
                    inset,
                    inset,
                    width - 2 * inset,
                    height - 2 * inset,
                    4);
        }
    }
}
