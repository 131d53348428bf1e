package org.moultwright.boot.command;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import org.moultwright.domain.BroodRecord;
import org.moultwright.store.H2Store;

/** Opens stores for commands that must not make one. */
final class Stores {
    /** Later than any reading: the year 9999. */
    static final Instant END_OF_TIME = Instant.parse("9999-12-31T00:00:00Z");

    private Stores() {}

    static H2Store existing(Path file) {
        if (!Files.exists(file)) {
            throw new Refusal("There is no store at '" + file + "'. Check the name, or make one with import.");
        }
        return H2Store.open(file);
    }

    static BroodRecord brood(H2Store store, Path file, String code) {
        return store.book()
                .find(code)
                .orElseThrow(() -> new Refusal("There is no brood '%s' in '%s'. It holds: %s."
                        .formatted(
                                code,
                                file,
                                String.join(
                                        ", ",
                                        store.book().broods().stream()
                                                .map(brood -> brood.code())
                                                .toList()))));
    }
}
