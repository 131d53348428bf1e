package org.moultwright.exchange;

import com.fasterxml.jackson.core.JsonProcessingException;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Optional;
import org.moultwright.workflow.DocumentException;
import org.moultwright.workflow.SheetDraft;
import org.moultwright.workflow.SheetDrafts;

/**
 * The file in which sheets of the round wait until they are saved.
 *
 * <p>It is written anew beside itself, forced to the disk, and then put in place in one step, so that it is whole
 * even where the power fails while it is written. One that is not understood is never written over: it is moved
 * aside, under a name that was free; while one cannot be read nor moved, nothing is kept.
 */
public final class SheetDraftsFile implements SheetDrafts {
    private final Path file;
    private volatile boolean isInTheWay;

    public SheetDraftsFile(Path file) {
        this.file = file.toAbsolutePath();
    }

    /** Reads what was kept. */
    public Loaded load() {
        if (Files.notExists(file)) {
            return new Loaded(List.of(), Optional.empty());
        }
        try {
            return new Loaded(
                    SheetDraftsJson.read(new String(Files.readAllBytes(file), StandardCharsets.UTF_8)),
                    Optional.empty());
        } catch (JsonProcessingException | IllegalArgumentException notUnderstood) {
            return setAside();
        } catch (IOException unreadable) {
            return inTheWay(unreadable);
        }
    }

    @Override
    public void keep(List<SheetDraft> drafts) {
        if (isInTheWay) {
            throw new DocumentException(
                    DocumentException.Reason.WRITE_FAILED, file + " could not be read, so it is left as it is.");
        }
        try {
            if (drafts.isEmpty()) {
                Files.deleteIfExists(file);
            } else {
                Path fresh = file.resolveSibling(file.getFileName() + ".new");
                force(fresh, SheetDraftsJson.print(drafts));
                Files.move(fresh, file, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
            }
        } catch (IOException e) {
            throw new DocumentException(
                    DocumentException.Reason.WRITE_FAILED, file + " cannot be written: " + e.getMessage() + ".", e);
        }
    }

    private static void force(Path target, byte[] bytes) throws IOException {
        try (FileChannel channel = FileChannel.open(
                target, StandardOpenOption.CREATE, StandardOpenOption.TRUNCATE_EXISTING, StandardOpenOption.WRITE)) {
            ByteBuffer rest = ByteBuffer.wrap(bytes);
            while (rest.hasRemaining()) {
                channel.write(rest);
            }
            channel.force(true);
        }
    }

    private Loaded setAside() {
        try {
            for (int number = 1; ; number++) {
                Path aside = file.resolveSibling(file.getFileName() + ".not-understood-" + number);
                if (Files.notExists(aside)) {
                    Files.move(file, aside);
                    return new Loaded(
                            List.of(),
                            Optional.of("They are kept in " + aside + ", which can be read with any text editor."));
                }
            }
        } catch (IOException e) {
            return inTheWay(e);
        }
    }

    private Loaded inTheWay(IOException fault) {
        isInTheWay = true;
        return new Loaded(
                List.of(),
                Optional.of(file + " cannot be read (" + fault.getMessage() + ") and is left as it is. Until it is"
                        + " mended or moved away, sheets are kept only once they are saved."));
    }

    /**
     * Sheets as they were found.
     *
     * @param problem what became of a file that was not understood, in sentences
     */
    public record Loaded(List<SheetDraft> drafts, Optional<String> problem) {}
}
