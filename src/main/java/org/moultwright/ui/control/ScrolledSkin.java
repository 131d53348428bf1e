package org.moultwright.ui.control;

import javafx.scene.control.ScrollPane;
import javafx.scene.control.skin.ScrollPaneSkin;

/**
 * What stands in a scroll pane is painted where it changed. The toolkit keeps a picture of all of it to be moved when it
 * is scrolled, and paints that picture anew, all of it, at every letter typed and every blink of a caret.
 */
public final class ScrolledSkin extends ScrollPaneSkin {
    public ScrolledSkin(ScrollPane pane) {
        super(pane);
        pane.lookup(".viewport").setCache(false);
    }
}
