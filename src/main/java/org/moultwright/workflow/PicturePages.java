package org.moultwright.workflow;

import java.nio.file.Path;
import java.time.Instant;

/** Saves a page drawn on screen. */
@FunctionalInterface
public interface PicturePages {
    /**
     * Saves a picture as a PDF of one page on its side, whole or not at all.
     *
     * @param title what the document says it is
     * @param madeAt when
     * @throws DocumentException if it cannot be written
     */
    void save(PagePicture picture, String title, Instant madeAt, Path pdf);
}
