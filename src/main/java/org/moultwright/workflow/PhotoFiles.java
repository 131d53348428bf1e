package org.moultwright.workflow;

import java.nio.file.Path;
import java.util.Optional;

/**
 * The pictures of photos, as files beside the book, each named by what is in it. A picture that is there is never
 * changed and never removed; the same one kept twice is one file.
 */
public interface PhotoFiles {

    /**
     * Keeps a copy of a picture's file; it is on disk when this returns.
     *
     * @return the name it is kept under
     * @throws PhotoException if it is no picture, too large, or cannot be written; nothing is kept then
     */
    String keep(Path picture);

    /**
     * Keeps a picture's bytes, as {@link #keep(Path)} does.
     *
     * @param name what the picture is called, for what is said of it
     */
    String keep(byte[] picture, String name);

    /** Keeps a picture that has no file, as {@link #keep(Path)} does. */
    String keep(PagePicture picture, String name);

    /** Whether the same picture is kept already; false where that cannot be told. */
    boolean holds(Path picture);

    /** Where a picture is; empty where it is not there. */
    Optional<Path> find(String file);

    /**
     * Reads a picture upright, no longer nor higher than so many pixels; never more of it at once than that takes.
     *
     * @throws PhotoException if it is not there or cannot be read
     */
    PagePicture look(String file, int longestPixels);
}
