package org.moultwright.settings;

/** One of the two ways the workbench looks. */
public enum Theme {
    LIGHT,
    DARK
}
