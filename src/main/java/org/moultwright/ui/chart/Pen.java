package org.moultwright.ui.chart;

import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.paint.Paint;
import javafx.scene.shape.StrokeLineCap;
import javafx.scene.text.Font;
import javafx.scene.text.Text;
import javafx.scene.text.TextAlignment;
import org.moultwright.ui.theme.Palette;
import org.moultwright.ui.theme.Token;

/**
 * Draws on a canvas in the colours and the size of text in force. Hairlines are set on whole pixels, so that
 * they are one pixel wide and not two half ones. Where text is twice as large as on a screen, as on paper, lines,
 * dashes and dots are too.
 */
final class Pen {
    private static final double SCREEN_TEXT_PIXELS = 15;

    private final GraphicsContext graphics;
    private final Palette palette;
    private final double textPixels;
    private final double weight;

    Pen(GraphicsContext graphics, Palette palette, double textPixels) {
        this.graphics = graphics;
        this.palette = palette;
        this.textPixels = textPixels;
        this.weight = Math.max(1, Math.floor(textPixels / SCREEN_TEXT_PIXELS));
    }

    /** So many pixels of a screen, as many as they are here. */
    double pixels(double onScreen) {
        return onScreen * weight;
    }

    Palette palette() {
        return palette;
    }

    Color colour(Token token) {
        return palette.colour(token);
    }

    /** The size of running text, in pixels. */
    double em() {
        return textPixels;
    }

    void alpha(double opacity) {
        graphics.setGlobalAlpha(opacity);
    }

    void fill(Paint paint, double x, double y, double width, double height) {
        graphics.setFill(paint);
        graphics.fillRect(x, y, width, height);
    }

    void bar(Paint paint, double x, double y, double width, double height, double radius) {
        graphics.setFill(paint);
        graphics.fillRoundRect(x, y, width, height, 2 * radius, 2 * radius);
    }

    void polygon(Paint paint, double[] xs, double[] ys) {
        graphics.setFill(paint);
        graphics.fillPolygon(xs, ys, xs.length);
    }

    void dot(Paint fill, Paint ring, double x, double y, double radius) {
        double reach = pixels(radius);
        graphics.setFill(fill);
        graphics.fillOval(x - reach, y - reach, 2 * reach, 2 * reach);
        stroke(ring, 1.3);
        graphics.strokeOval(x - reach, y - reach, 2 * reach, 2 * reach);
    }

    void vertical(Paint paint, double width, double x, double top, double bottom) {
        stroke(paint, width);
        graphics.strokeLine(crisp(x), top, crisp(x), bottom);
    }

    void horizontal(Paint paint, double y, double left, double right) {
        stroke(paint, 1);
        graphics.strokeLine(left, crisp(y), right, crisp(y));
    }

    void polyline(Paint paint, double width, double[] xs, double[] ys, int count) {
        stroke(paint, width);
        graphics.strokePolyline(xs, ys, count);
    }

    /** A line in dashes of so many pixels, as far apart. */
    void dashed(Paint paint, double width, double dash, double gap, double[] xs, double[] ys) {
        stroke(paint, width);
        graphics.setLineDashes(pixels(dash), pixels(gap));
        graphics.strokePolyline(xs, ys, xs.length);
        graphics.setLineDashes();
    }

    /** A row of round points. */
    void dotted(Paint paint, double y, double left, double right) {
        stroke(paint, 1.8);
        graphics.setLineCap(StrokeLineCap.ROUND);
        graphics.setLineDashes(0.1, pixels(5));
        graphics.strokeLine(left, y, right, y);
        graphics.setLineDashes();
        graphics.setLineCap(StrokeLineCap.BUTT);
    }

    void frame(Paint paint, double width, double x, double y, double w, double h, double radius) {
        stroke(paint, width);
        graphics.strokeRoundRect(x, y, w, h, 2 * radius, 2 * radius);
    }

    /** Words whose middle line is at {@code y}. */
    void words(String words, Type type, Token colour, double x, double y, TextAlignment alignment) {
        graphics.setFont(type.font(textPixels));
        graphics.setFill(colour(colour));
        graphics.setTextAlign(alignment);
        graphics.setTextBaseline(VPos.CENTER);
        graphics.fillText(words, x, y);
    }

    double width(String words, Type type) {
        return width(words, type.font(textPixels));
    }

    private static double width(String words, Font font) {
        Text text = new Text(words);
        text.setFont(font);
        return text.getLayoutBounds().getWidth();
    }

    private void stroke(Paint paint, double width) {
        graphics.setStroke(paint);
        graphics.setLineWidth(pixels(width));
    }

    private static double crisp(double pixel) {
        return Math.floor(pixel) + 0.5;
    }
}
