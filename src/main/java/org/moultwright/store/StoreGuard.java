package org.moultwright.store;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import org.h2.mvstore.MVStoreException;
import org.moultwright.store.StoreException.Reason;
import org.moultwright.store.file.OwnerNote;

/**
 * Says whether a file may be opened as a store, without changing it or running anything in it.
 *
 * <p>A store of ours holds plain tables, and nothing that could run a stranger's program: no trigger,
 * alias, linked table, view, or table of another engine.
 */
final class StoreGuard {
    private static final byte[] DATABASE_START = "H:2,".getBytes(StandardCharsets.US_ASCII);

    /** The beginnings of the only statements a store of ours is made of. */
    private static final Pattern PLAIN = Pattern.compile(
            "CREATE (USER|CACHED TABLE|SEQUENCE|(UNIQUE )?INDEX|PRIMARY KEY)\\b.*"
                    + "|ALTER TABLE .* ADD CONSTRAINT .*"
                    + "|SET CREATE_BUILD .*",
            Pattern.DOTALL);

    /** Words by which even a plain table reaches outside the database. */
    private static final Pattern REACHING_OUT = Pattern.compile(
            "\\b(ENGINE|LINK_SCHEMA|FILE_READ|FILE_WRITE|CSVREAD|CSVWRITE|RUNSCRIPT|SCRIPT|ALIAS|TRIGGER)\\b");

    private StoreGuard() {}

    /**
     * The version of a store's tables.
     *
     * @throws StoreException if the file must not be opened
     */
    static int version(Path file) {
        requireDatabase(file);
        StoreContent content = read(file);
        if (content.versions().isEmpty()) {
            throw new StoreException(
                    Reason.NOT_A_STORE, "'" + file + "' is a database of another program, not a store.");
        }
        requirePlain(file, content.statements());
        int version = Collections.max(content.versions());
        if (version > Migrations.LATEST) {
            throw new StoreException(
                    Reason.NEWER_SCHEMA,
                    "'%s' was written by a later Moultwright: its tables are of version %d, this one knows %d."
                            .formatted(file, version, Migrations.LATEST));
        }
        return version;
    }

    static StoreException inUse(Path file, Throwable cause) {
        Optional<String> owner = new OwnerNote(file).read();
        return new StoreException(
                Reason.IN_USE,
                "'" + file + "' is open in another Moultwright"
                        + owner.map(words -> " (" + words + ")").orElse("") + ".",
                cause);
    }

    private static void requireDatabase(Path file) {
        if (!Files.exists(file)) {
            throw new StoreException(Reason.MISSING, "There is no file '" + file + "'.");
        }
        byte[] start;
        try (var bytes = Files.newInputStream(file)) {
            start = bytes.readNBytes(DATABASE_START.length);
        } catch (IOException e) {
            throw new StoreException(Reason.NOT_A_STORE, "'" + file + "' cannot be read as a file.", e);
        }
        if (!Arrays.equals(start, DATABASE_START)) {
            throw new StoreException(Reason.NOT_A_STORE, "'" + file + "' is not a store.");
        }
    }

    private static StoreContent read(Path file) {
        try {
            return StoreContent.read(file);
        } catch (MVStoreException e) {
            if (Faults.isLocked(e)) {
                throw inUse(file, e);
            }
            throw damaged(file, e);
        } catch (RuntimeException e) {
            throw damaged(file, e);
        }
    }

    private static StoreException damaged(Path file, RuntimeException cause) {
        return new StoreException(Reason.DAMAGED, "'" + file + "' is damaged: parts of it cannot be read.", cause);
    }

    private static void requirePlain(Path file, List<String> statements) {
        for (String statement : statements) {
            if (!PLAIN.matcher(statement).matches()
                    || REACHING_OUT.matcher(statement.toUpperCase(Locale.ROOT)).find()) {
                throw new StoreException(
                        Reason.NOT_A_STORE,
                        "'%s' holds what no store holds and could run a program: %s."
                                .formatted(file, brief(statement)));
            }
        }
    }

    private static String brief(String statement) {
        return statement.lines().findFirst().orElse("").replaceAll("\\s+", " ").strip();
    }
}
