package org.moultwright.ui.broods;

import javafx.scene.image.Image;
import javafx.scene.image.PixelFormat;
import org.moultwright.ui.control.SaveChooser;
import org.moultwright.ui.print.PagePrinter;
import org.moultwright.workflow.PagePicture;
import org.moultwright.workflow.PicturePages;

/**
 * How a brood's page comes on paper.
 *
 * @param printer prints it
 * @param pages saves it as PDF
 * @param chooser asks where
 */
public record BroodPaper(PagePrinter printer, PicturePages pages, SaveChooser chooser) {

    static PagePicture picture(Image image) {
        int width = (int) image.getWidth();
        int height = (int) image.getHeight();
        int[] argb = new int[width * height];
        image.getPixelReader().getPixels(0, 0, width, height, PixelFormat.getIntArgbInstance(), argb, 0, width);
        return new PagePicture(width, height, argb);
    }
}
