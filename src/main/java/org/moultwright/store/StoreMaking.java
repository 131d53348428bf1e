package org.moultwright.store;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.flywaydb.core.api.FlywayException;
import org.moultwright.file.FileInTheMaking;
import org.moultwright.language.Texts;
import org.moultwright.store.StoreException.Reason;

/**
 * Makes stores: new ones, and newer ones of those of an earlier version. Whatever ends it, a kill too, the
 * file of the store is as it was before or as it is to be.
 */
final class StoreMaking {
    private final Migrations migrations;

    StoreMaking(Migrations migrations) {
        this.migrations = migrations;
    }

    /** Makes a new store, unless another program just did. */
    void make(Path file) {
        try (FileInTheMaking made = FileInTheMaking.of(file)) {
            migrations.apply(made.path());
            made.become();
        } catch (FileAlreadyExistsException madeByAnother) {
            // Then that one is opened, like any other.
        } catch (IOException e) {
            throw Faults.ofWriting(file, e);
        }
    }

    /** Brings a closed store to the latest version, after a verified backup beside it. */
    void bringUpToDate(Path file, int version) {
        try (FileInTheMaking newer = FileInTheMaking.of(file)) {
            Path backup = Backup.beforeMigration(file, version);
            Files.copy(backup, newer.path());
            migrate(file, version, backup, newer.path());
            if (Files.mismatch(backup, file) >= 0) {
                throw StoreGuard.inUse(file);
            }
            newer.replace();
        } catch (IOException e) {
            throw Faults.ofWriting(file, e);
        }
    }

    private void migrate(Path file, int version, Path backup, Path copy) {
        try {
            migrations.apply(copy);
            StoreGuard.version(copy);
        } catch (FlywayException e) {
            if (Faults.isDiskFull(e)) {
                throw Faults.unchecked(e);
            }
            throw new StoreException(
                    Reason.NOT_UP_TO_DATE,
                    Texts.say(
                            "'{0}' could not be brought from version {1} to {2}. A backup of it is '{3}'.",
                            file, version, migrations.latest(), backup),
                    e);
        }
    }
}
