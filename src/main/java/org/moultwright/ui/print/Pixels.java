package org.moultwright.ui.print;

import javafx.scene.image.Image;
import javafx.scene.image.PixelFormat;
import org.moultwright.workflow.PagePicture;

/** What was drawn on screen, for a page that knows no toolkit. */
public final class Pixels {
    private Pixels() {}

    public static PagePicture of(Image image) {
        int width = (int) image.getWidth();
        int height = (int) image.getHeight();
        int[] argb = new int[width * height];
        image.getPixelReader().getPixels(0, 0, width, height, PixelFormat.getIntArgbInstance(), argb, 0, width);
        return new PagePicture(width, height, argb);
    }
}
