package org.moultwright.domain.label;

/** The outline of a label. */
public enum LabelShape {
    RECTANGLE,
    /** A circle as wide as the label, such as for the lid of a round pot. */
    ROUND
}
