package org.moultwright.ui.theme;

/** One of the two ways the workbench looks. */
public enum Theme {
    LIGHT,
    DARK;

    public Palette palette() {
        return new Palette(this);
    }
}
