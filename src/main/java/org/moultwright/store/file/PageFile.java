package org.moultwright.store.file;

import java.nio.file.Path;
import org.h2.mvstore.MVStore;

/**
 * A database file as pages, without the database that runs on them.
 *
 * <p>After a program was killed the head of the file may name pages older than the latest. The database
 * goes by the head and by the place it foretells for the next pages; where these went elsewhere it misses
 * them, although they are whole, and writes over them. So after such an end the pages are found by
 * looking at every block.
 */
public final class PageFile {
    private PageFile() {}

    /** Opens the latest pages to read them. Changes nothing. */
    public static MVStore read(Path file, DatabaseHeader header) {
        return builder(file, header).readOnly().open();
    }

    /** Notes the latest pages in the head, where a killed program left it behind, so that the database finds them. */
    public static void settle(Path file, DatabaseHeader header) {
        if (!header.closed()) {
            builder(file, header).open().close();
        }
    }

    private static MVStore.Builder builder(Path file, DatabaseHeader header) {
        MVStore.Builder builder = new MVStore.Builder().fileName(ExactFilePath.pageFileName(file));
        return header.closed() ? builder : builder.recoveryMode();
    }
}
