package org.moultwright.exchange;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.InstantSource;
import java.util.Optional;
import org.moultwright.file.WholeFile;
import org.moultwright.language.Texts;
import org.moultwright.workflow.DocumentException;
import org.moultwright.workflow.SitterMark;

/** A file beside the store that is there while the desk is in a sitter's hands, and says since when. */
public final class SitterFile implements SitterMark {
    private final Path file;
    private final InstantSource clock;

    public SitterFile(Path file, InstantSource clock) {
        this.file = file;
        this.clock = clock;
    }

    /** A file that is there and not understood is a sitter's all the same: nobody but the keeper may end that. */
    @Override
    public Optional<Instant> read() {
        if (Files.notExists(file)) {
            return Optional.empty();
        }
        try {
            return Optional.of(Instant.parse(new String(Files.readAllBytes(file), StandardCharsets.UTF_8).strip()));
        } catch (IOException | DateTimeException notUnderstood) {
            return Optional.of(clock.instant());
        }
    }

    @Override
    public void write(Instant since) {
        try {
            WholeFile.write(file, (since + "\n").getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw fault(e);
        }
    }

    @Override
    public void remove() {
        try {
            Files.deleteIfExists(file);
        } catch (IOException e) {
            throw fault(e);
        }
    }

    private DocumentException fault(IOException cause) {
        return new DocumentException(
                DocumentException.Reason.WRITE_FAILED,
                Texts.say("{0} cannot be written: {1}.", file, cause.getMessage()),
                cause);
    }
}
