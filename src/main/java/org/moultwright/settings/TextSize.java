package org.moultwright.settings;

/** How large text is; every size on screen grows with it. */
public enum TextSize {
    NORMAL(1),
    LARGE(1.25),
    LARGER(1.5),
    LARGEST(1.75);

    private static final double BASE_PIXELS = 15;

    private final double factor;

    TextSize(double factor) {
        this.factor = factor;
    }

    public double factor() {
        return factor;
    }

    /** Height of body text in pixels. */
    public double pixels() {
        return BASE_PIXELS * factor;
    }
}
