package org.moultwright.ui.control;

import javafx.beans.binding.Bindings;
import javafx.beans.binding.DoubleBinding;
import javafx.scene.control.Label;

/** Never seen: tells the size of text that style sheets set where it stands, for what they cannot size themselves. */
public final class Em extends Label {
    public Em() {
        setVisible(false);
        setManaged(false);
    }

    /** The size of running text here, in pixels. */
    public double pixels() {
        return getFont().getSize();
    }

    /** So many times the size of text, in pixels. */
    public DoubleBinding times(double ems) {
        return Bindings.createDoubleBinding(() -> ems * pixels(), fontProperty());
    }
}
