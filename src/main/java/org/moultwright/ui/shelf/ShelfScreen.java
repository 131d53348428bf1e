package org.moultwright.ui.shelf;

import org.moultwright.language.Texts;
import org.moultwright.ui.control.Sign;
import org.moultwright.ui.shell.PlainScreen;
import org.moultwright.ui.shell.Screen;
import org.moultwright.ui.shell.ScreenName;

/** The shelf, as a screen of the frame. */
public final class ShelfScreen {
    public static final ScreenName NAME = new ScreenName("shelf", Texts.say("Shelf"), Sign.SHELF);

    private ShelfScreen() {}

    public static Screen of(ShelfDesk desk) {
        ShelfPages pages = new ShelfPages(desk);
        return new PlainScreen(NAME, pages, pages::takeFocus, ShelfKeys.HINTS);
    }
}
