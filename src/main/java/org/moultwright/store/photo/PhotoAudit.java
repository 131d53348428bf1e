package org.moultwright.store.photo;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.moultwright.domain.PhotoNote;
import org.moultwright.store.sql.Problem;

/** Looks for the picture of every photo, and whether it still is what it was. */
public final class PhotoAudit {
    private static final String TABLE = "tray_photo";

    private PhotoAudit() {}

    public static List<Problem> of(Handle handle, Path folder) {
        return handle
                .createQuery("select distinct picture from " + TABLE + " order by picture")
                .mapTo(String.class)
                .list()
                .stream()
                .flatMap(file -> problem(file, folder).stream())
                .toList();
    }

    private static Optional<Problem> problem(String file, Path folder) {
        if (!PhotoNote.isFile(file)) {
            return Optional.of(new Problem(TABLE, "picture " + file, "a SHA-256 with an ending"));
        }
        Path picture = folder.resolve(file);
        try {
            return Files.exists(picture) && ContentHash.isOf(picture)
                    ? Optional.empty()
                    : Optional.of(new Problem(TABLE, "picture " + file, "to be whole in '" + folder + "'"));
        } catch (IOException unreadable) {
            return Optional.of(new Problem(TABLE, "picture " + file, "to be readable in '" + folder + "'"));
        }
    }
}
