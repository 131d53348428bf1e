package org.moultwright.ui.print;

import java.nio.IntBuffer;
import javafx.scene.image.Image;
import javafx.scene.image.PixelBuffer;
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

    /** May be called from any thread. The picture's pixels are copied once, and not again by the toolkit. */
    public static Image image(PagePicture picture) {
        return new WritableImage(new PixelBuffer<>(
                picture.widthPixels(),
                picture.heightPixels(),
                IntBuffer.wrap(picture.argb()),
                PixelFormat.getIntArgbPreInstance()));
    }
}
