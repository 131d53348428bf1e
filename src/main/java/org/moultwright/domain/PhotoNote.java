package org.moultwright.domain;

import java.time.Instant;
import java.util.UUID;
import java.util.regex.Pattern;

/**
 * A photo of a tray. The picture itself is a file beside the book, named by what is in it.
 *
 * @param id names this note for ever
 * @param at when it was attached
 * @param tray the tray's code
 * @param file the picture's file: the SHA-256 of its bytes, and an ending that tells its form
 * @param name what the picture was called when it came, possibly empty
 */
public record PhotoNote(UUID id, Instant at, String tray, String file, String name) {
    /** Sixty-four digits and one ending; nothing that could lead out of the folder. */
    private static final Pattern FILE = Pattern.compile("[0-9a-f]{64}\\.[a-z]{3}");

    public PhotoNote {
        Require.text("tray", tray);
        Require.that(isFile(file), "file is '" + file + "' but must be a SHA-256 with an ending, such as .jpg");
    }

    /** Whether a picture's file may be called so. */
    public static boolean isFile(String file) {
        return FILE.matcher(file).matches();
    }
}
