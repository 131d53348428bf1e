package org.moultwright.store.photo;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.moultwright.domain.PhotoNote;
import org.moultwright.file.FileInTheMaking;

/** Copies of a folder of photos, for backups. A picture that is there already is left as it is. */
public final class PhotoCopies {
    private PhotoCopies() {}

    /** Copies every picture of a folder, if there is one, each whole or not at all. */
    public static void copy(Path from, Path to) throws IOException {
        List<Path> pictures = pictures(from);
        if (pictures.isEmpty()) {
            return;
        }
        Files.createDirectories(to);
        for (Path picture : pictures) {
            Path target = to.resolve(picture.getFileName());
            if (!Files.exists(target)) {
                copyOne(picture, target);
            }
        }
    }

    private static void copyOne(Path picture, Path target) throws IOException {
        try (FileInTheMaking copy = FileInTheMaking.of(target)) {
            Files.copy(picture, copy.path());
            copy.become();
        } catch (FileAlreadyExistsException copiedMeanwhile) {
            // Its name is its content: it is the same.
        }
    }

    private static List<Path> pictures(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> inside = Files.list(folder)) {
            return inside.filter(file -> PhotoNote.isFile(String.valueOf(file.getFileName())))
                    .toList();
        }
    }
}
