package org.moultwright.ui.shell;

import javafx.geometry.Orientation;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Skin;
import org.moultwright.ui.control.FocusInSight;
import org.moultwright.ui.control.ScrolledSkin;

/** Where a screen's page stands: as large as its room while that is enough, else scrolled to what has the keyboard. */
public final class PageHost extends ScrollPane {
    public PageHost() {
        setFitToWidth(true);
        setFitToHeight(true);
        setFocusTraversable(false);
        FocusInSight.of(this);
    }

    /** A press beside everything on a page scrolls nothing and types nothing: the keyboard stays where it was. */
    @Override
    public void requestFocus() {}

    @Override
    public Orientation getContentBias() {
        return Orientation.HORIZONTAL;
    }

    @Override
    protected Skin<?> createDefaultSkin() {
        return new ScrolledSkin(this);
    }
}
