package org.moultwright.store;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import org.moultwright.language.Texts;
import org.moultwright.store.StoreException.Reason;
import org.moultwright.store.file.DatabaseHeader;
import org.moultwright.store.file.OwnerNote;

/**
 * Says whether a file may be opened as a store, without changing it or running anything in it.
 *
 * <p>A store of ours holds plain tables, and nothing that could run a stranger's program: no trigger,
 * alias, linked table, view, or table of another engine.
 */
final class StoreGuard {
    /** The beginnings of the only statements a store of ours is made of. */
    private static final Pattern PLAIN = Pattern.compile(
            "CREATE (USER|CACHED TABLE|SEQUENCE|(UNIQUE (NULLS \\w+ )?)?INDEX|PRIMARY KEY)\\b.*"
                    + "|ALTER TABLE .* ADD CONSTRAINT .*"
                    + "|SET (CREATE_BUILD|WRITE_DELAY|CACHE_SIZE) \\d+",
            Pattern.DOTALL);

    /** Words by which even a plain table reaches outside the database. */
    private static final List<String> REACHING_OUT = List.of(
            "ENGINE", "LINK_SCHEMA", "FILE_READ", "FILE_WRITE", "CSVREAD", "CSVWRITE", "RUNSCRIPT", "ALIAS", "TRIGGER");

    private StoreGuard() {}

    /**
     * The version of a store's tables, which some steps lead to or lead on from.
     *
     * @throws StoreException if the file must not be opened, or is of a later version
     */
    static int version(Path file, Migrations migrations) {
        int version = version(file);
        if (version > migrations.latest()) {
            throw new StoreException(
                    Reason.NEWER_SCHEMA,
                    Texts.say(
                            "'{0}' was written by a later Moultwright: its tables are of version {1}, this one knows {2}.",
                            file, version, migrations.latest()));
        }
        return version;
    }

    /**
     * The version of a store's tables, whichever it is.
     *
     * @throws StoreException if the file must not be opened
     */
    static int version(Path file) {
        if (!Files.exists(file)) {
            throw new StoreException(Reason.MISSING, Texts.say("There is no file '{0}'.", file));
        }
        requireUnlocked(file);
        StoreContent content = read(file, header(file));
        if (content.versions().isEmpty()) {
            throw new StoreException(
                    Reason.NOT_A_STORE, Texts.say("'{0}' is a database of another program, not a store.", file));
        }
        requirePlain(file, content.statements());
        return Collections.max(content.versions());
    }

    static StoreException inUse(Path file) {
        Optional<String> owner = new OwnerNote(file).read();
        return new StoreException(
                Reason.IN_USE,
                owner.map(words -> Texts.say("'{0}' is open in another Moultwright ({1}).", file, words))
                        .orElseGet(() -> Texts.say("'{0}' is open in another Moultwright.", file)));
    }

    /** The head of a file that must be a database's. */
    static DatabaseHeader header(Path file) {
        try {
            return DatabaseHeader.read(file)
                    .orElseThrow(
                            () -> new StoreException(Reason.NOT_A_STORE, Texts.say("'{0}' is not a store.", file)));
        } catch (IOException e) {
            throw new StoreException(Reason.NOT_A_STORE, Texts.say("'{0}' cannot be read as a file.", file), e);
        }
    }

    private static void requireUnlocked(Path file) {
        try {
            if (isLocked(file)) {
                throw inUse(file);
            }
        } catch (IOException e) {
            throw new StoreException(Reason.NOT_A_STORE, Texts.say("'{0}' cannot be read as a file.", file), e);
        }
    }

    /** Whether another program has a file open as a store; not to be asked while this one has. */
    static boolean isLocked(Path file) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.READ);
                FileLock lock = channel.tryLock(0, Long.MAX_VALUE, true)) {
            return lock == null;
        }
    }

    private static StoreContent read(Path file, DatabaseHeader header) {
        try {
            return StoreContent.read(file, header);
        } catch (RuntimeException e) {
            throw new StoreException(
                    Reason.DAMAGED, Texts.say("'{0}' is damaged: parts of it cannot be read.", file), e);
        }
    }

    private static void requirePlain(Path file, List<String> statements) {
        for (String statement : statements) {
            if (!PLAIN.matcher(statement).matches() || reachesOut(statement.toUpperCase(Locale.ROOT))) {
                throw new StoreException(
                        Reason.NOT_A_STORE,
                        Texts.say(
                                "'{0}' holds what no store holds and could run a program: {1}.",
                                file, brief(statement)));
            }
        }
    }

    /** Looked for as mere letters first, which nearly always is the answer, and far quicker. */
    private static boolean reachesOut(String statement) {
        return REACHING_OUT.stream()
                .anyMatch(word -> statement.contains(word)
                        && Pattern.compile("\\b" + word + "\\b")
                                .matcher(statement)
                                .find());
    }

    private static String brief(String statement) {
        return statement.lines().findFirst().orElse("").replaceAll("\\s+", " ").strip();
    }
}
