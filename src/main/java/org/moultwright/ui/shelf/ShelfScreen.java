package org.moultwright.ui.shelf;

import org.kordamp.ikonli.materialdesign2.MaterialDesignD;
import org.moultwright.ui.shell.PlainScreen;
import org.moultwright.ui.shell.Screen;

/** The shelf, as a screen of the frame. */
public final class ShelfScreen {
    private ShelfScreen() {}

    public static Screen of(ShelfDesk desk) {
        ShelfView view = new ShelfView(new ShelfViewModel(desk));
        return new PlainScreen(
                "shelf", "Shelf", MaterialDesignD.DRESSER_OUTLINE, view, view::takeFocus, ShelfKeys.HINTS);
    }
}
