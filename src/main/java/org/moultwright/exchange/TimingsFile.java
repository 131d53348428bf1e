package org.moultwright.exchange;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.moultwright.domain.AssumedTiming;
import org.moultwright.domain.AssumedTimings;
import org.moultwright.file.FileInTheMaking;
import org.moultwright.file.WholeFile;
import org.moultwright.language.Texts;
import org.moultwright.workflow.BroodFolders.FolderProblem;

/**
 * What is assumed of the timing of species: the file shipped with the program, and before it the keeper's own.
 *
 * <p>The keeper's file is only ever read. One that is not understood is told of, line by line, and not used.
 */
public final class TimingsFile {
    /** The name of the keeper's own file. */
    public static final String NAME = "timings.json";

    private static final String SHIPPED = Texts.say("the file shipped with Moultwright");

    private final Path own;

    /** @param own the keeper's file; it need not be there */
    public TimingsFile(Path own) {
        this.own = own;
    }

    /** Those shipped with the program. */
    public static AssumedTimings shipped() {
        Problems problems = new Problems();
        try {
            List<AssumedTiming> timings = TimingsJson.read(SHIPPED, shippedText(), problems);
            if (!problems.isEmpty()) {
                throw new IllegalStateException(told(problems));
            }
            return new AssumedTimings(timings);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Where the keeper's own file stands or would stand. */
    public Path place() {
        return own;
    }

    /** The keeper's own, if there are any and all is understood, and behind them those shipped with the program. */
    public Loaded load() {
        if (Files.notExists(own)) {
            return new Loaded(shipped(), Optional.empty());
        }
        Problems problems = new Problems();
        try {
            List<AssumedTiming> timings = TimingsJson.read(own.toString(), text(Files.readAllBytes(own)), problems);
            if (problems.isEmpty()) {
                return new Loaded(shipped().after(timings), Optional.empty());
            }
        } catch (CharacterCodingException notText) {
            problems.add(own.toString(), 1, "", "", Texts.say("text in UTF-8"));
        } catch (IOException unreadable) {
            problems.add(own.toString(), 1, "", "", Texts.say("a file that can be read; {0}", unreadable.getMessage()));
        }
        return new Loaded(
                shipped(),
                Optional.of(Texts.say(
                        "{0} Mend it there or move the file away; it is left as it is, and the timings shipped "
                                + "with Moultwright are used.",
                        told(problems))));
    }

    /**
     * Puts a copy of the shipped file in the place of the keeper's own, to begin from.
     *
     * @return whether it did: a file that is there stays as it is
     * @throws UncheckedIOException if it cannot be written
     */
    public boolean copyShipped() {
        if (Files.exists(own)) {
            return false;
        }
        try {
            Files.createDirectories(own.toAbsolutePath().getParent());
            writeWhole(shippedText().getBytes(StandardCharsets.UTF_8));
            return true;
        } catch (IOException e) {
            throw new UncheckedIOException(Texts.say("'{0}' cannot be written: {1}", own, e.getMessage()), e);
        }
    }

    private void writeWhole(byte[] bytes) throws IOException {
        try (FileInTheMaking copy = FileInTheMaking.of(WholeFile.place(own))) {
            copy.write(bytes);
            copy.become();
        }
    }

    private static String shippedText() throws IOException {
        try (InputStream content = Objects.requireNonNull(TimingsFile.class.getResourceAsStream(NAME), NAME)) {
            return new String(content.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private static String text(byte[] bytes) throws CharacterCodingException {
        return StandardCharsets.UTF_8
                .newDecoder()
                .decode(ByteBuffer.wrap(bytes))
                .toString();
    }

    /** "timings.json, line 7, /timings/0/timing/batchSd, '9': expected a number within 0 and 2." */
    private static String told(Problems problems) {
        List<FolderProblem> all = problems.list();
        FolderProblem first = all.get(0);
        long line = Math.max(1, first.line());
        String place = first.column().isEmpty()
                ? Texts.say("{0}, line {1}", first.file(), line)
                : Texts.say("{0}, line {1}, {2}", first.file(), line, first.column());
        String wrong = first.value().isEmpty()
                ? Texts.say("{0}: expected {1}.", place, first.expected())
                : Texts.say("{0}, '{1}': expected {2}.", place, first.value(), first.expected());
        int others = all.size() - 1;
        return others == 0
                ? wrong
                : wrong + " " + Texts.count(others, "1 more place is wrong.", "{0} more places are wrong.", others);
    }

    /**
     * Timings as they were found.
     *
     * @param problem why the keeper's own file is not used, in sentences
     */
    public record Loaded(AssumedTimings timings, Optional<String> problem) {}
}
