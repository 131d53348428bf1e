package org.moultwright.ui.print;

import java.util.function.Supplier;
import javafx.scene.image.Image;
import org.moultwright.language.Texts;

/** Puts a picture on paper. */
@FunctionalInterface
public interface PagePrinter {
    /** What is said where there is no printer. */
    String NO_PRINTER = Texts.say("This machine has no printer. Save it as PDF or copy the picture instead.");

    /**
     * Asks where to, and prints.
     *
     * @param title how the printer names it
     * @param page makes the picture, once it is wanted
     * @return what came of it, in a sentence for the keeper; empty where they thought better of it
     */
    String print(String title, Supplier<Image> page);
}
