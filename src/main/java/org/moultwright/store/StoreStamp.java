package org.moultwright.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.time.Instant;
import java.util.Optional;
import org.moultwright.store.file.DatabaseHeader;

/**
 * How the file of a store was left. While a file has the same stamp it holds the same: whatever is written to a store
 * makes its pages of a later version, and one file put in the place of another was changed at another time.
 *
 * @param pagesVersion the last version of its pages
 * @param lengthBytes how long it is
 * @param lastChange when it was written to, as exactly as the disk knows
 */
public record StoreStamp(long pagesVersion, long lengthBytes, Instant lastChange) {

    /** The stamp of a file that was closed in good order; of any other there is none. */
    static Optional<StoreStamp> of(Path file) {
        try {
            BasicFileAttributes attributes = Files.readAttributes(file, BasicFileAttributes.class);
            return DatabaseHeader.read(file)
                    .filter(DatabaseHeader::closed)
                    .map(header -> new StoreStamp(
                            header.pagesVersion(),
                            attributes.size(),
                            attributes.lastModifiedTime().toInstant()));
        } catch (IOException unreadable) {
            return Optional.empty();
        }
    }
}
