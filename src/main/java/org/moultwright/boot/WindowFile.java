package org.moultwright.boot;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.moultwright.file.WholeFile;
import org.moultwright.settings.SettingsFile;

/**
 * The file that keeps the place of a desk's window from one day to the next. It is no setting: two desks share those.
 * Nothing hangs on it, so that one that cannot be read or written is passed over.
 *
 * @param file empty where no place is kept
 */
record WindowFile(Optional<Path> file) {
    static final WindowFile NONE = new WindowFile(Optional.empty());

    static WindowFile beside(SettingsFile settings) {
        return new WindowFile(Optional.of(settings.beside("window.txt")));
    }

    Optional<WindowPlace> read() {
        return file.filter(Files::exists).flatMap(WindowFile::read);
    }

    void keep(WindowPlace place) {
        file.ifPresent(there -> {
            try {
                WholeFile.write(there, List.of(place.written()));
            } catch (IOException notKept) {
                // The next window stands where the one before did.
            }
        });
    }

    private static Optional<WindowPlace> read(Path file) {
        try {
            return WindowPlace.read(new String(Files.readAllBytes(file), StandardCharsets.UTF_8).strip());
        } catch (IOException unread) {
            return Optional.empty();
        }
    }
}
