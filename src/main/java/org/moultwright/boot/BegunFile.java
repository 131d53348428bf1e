package org.moultwright.boot;

import java.util.concurrent.CompletableFuture;
import org.moultwright.exchange.DraftsFile;

/**
 * A file of what was begun on a screen, read aside while other things are opened: what reads it takes longer to load than
 * to read.
 *
 * @param loaded what was found in it
 */
record BegunFile<T>(DraftsFile<T> file, CompletableFuture<DraftsFile.Loaded<T>> loaded) {
    static <T> BegunFile<T> readAside(DraftsFile<T> file) {
        return new BegunFile<>(file, CompletableFuture.supplyAsync(file::load));
    }
}
