package org.moultwright.ui.print;

import javafx.scene.image.Image;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import org.moultwright.workflow.PagePicture;

/** Pictures of the toolkit as plain pixels, and back. */
public final class Pixels {
    private Pixels() {}

    public static PagePicture of(Image image) {
        int width = (int) image.getWidth();
        int height = (int) image.getHeight();
        int[] argb = new int[width * height];
        image.getPixelReader().getPixels(0, 0, width, height, PixelFormat.getIntArgbInstance(), argb, 0, width);
        return new PagePicture(width, height, argb);
    }

    /** May be called from any thread. */
    public static Image image(PagePicture picture) {
        int width = picture.widthPixels();
        int height = picture.heightPixels();
        WritableImage image = new WritableImage(width, height);
        image.getPixelWriter()
                .setPixels(0, 0, width, height, PixelFormat.getIntArgbInstance(), picture.argb(), 0, width);
        return image;
    }
}
