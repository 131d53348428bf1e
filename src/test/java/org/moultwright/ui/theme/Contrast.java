package org.moultwright.ui.theme;

import javafx.scene.paint.Color;

/** Contrast of two colours by WCAG 2.1: relative luminance (definition there), ratio 1 to 21. */
public final class Contrast {
    private Contrast() {}

    public static double between(Color one, Color other) {
        double a = luminance(one);
        double b = luminance(other);
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    private static double luminance(Color colour) {
        return 0.2126 * linear(colour.getRed())
                + 0.7152 * linear(colour.getGreen())
                + 0.0722 * linear(colour.getBlue());
    }

    private static double linear(double channel) {
        return channel <= 0.03928 ? channel / 12.92 : Math.pow((channel + 0.055) / 1.055, 2.4);
    }
}
