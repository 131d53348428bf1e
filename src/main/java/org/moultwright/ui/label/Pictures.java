package org.moultwright.ui.label;

import javafx.scene.image.Image;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import org.moultwright.workflow.PagePicture;

/** Pages drawn elsewhere, as pictures of the toolkit. */
final class Pictures {
    private Pictures() {}

    static Image image(PagePicture picture) {
        WritableImage image = new WritableImage(picture.widthPixels(), picture.heightPixels());
        image.getPixelWriter()
                .setPixels(
                        0,
                        0,
                        picture.widthPixels(),
                        picture.heightPixels(),
                        PixelFormat.getIntArgbInstance(),
                        picture.argb(),
                        0,
                        picture.widthPixels());
        return image;
    }
}
