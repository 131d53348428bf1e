package org.moultwright.ui.print;

import java.util.function.Supplier;
import javafx.scene.image.Image;

/** Puts a picture on paper. */
@FunctionalInterface
public interface PagePrinter {
    /**
     * Asks where to, and prints.
     *
     * @param title how the printer names it
     * @param page makes the picture, once it is wanted
     * @return what came of it
     */
    Printout print(String title, Supplier<Image> page);
}
