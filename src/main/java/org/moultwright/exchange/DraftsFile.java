package org.moultwright.exchange;

import com.fasterxml.jackson.core.JsonProcessingException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.moultwright.file.WholeFile;
import org.moultwright.language.Texts;
import org.moultwright.workflow.DocumentException;
import org.moultwright.workflow.Drafts;
import org.moultwright.workflow.FormDraft;
import org.moultwright.workflow.SheetDraft;

/**
 * The file in which what is begun on a screen waits until it is saved.
 *
 * <p>It is whole even where the power fails while it is written. One that is not understood is never written over: it is moved
 * aside, under a name that was free; while one cannot be read nor moved, nothing is kept.
 */
public final class DraftsFile<T> implements Drafts<T> {
    private final Path file;
    private final DraftsForm<T> form;
    private volatile boolean isInTheWay;

    private DraftsFile(Path file, DraftsForm<T> form) {
        this.file = file.toAbsolutePath();
        this.form = form;
    }

    /** One for sheets of the round. */
    public static DraftsFile<SheetDraft> ofSheets(Path file) {
        return new DraftsFile<>(file, new SheetDraftsJson());
    }

    /** One for forms. */
    public static DraftsFile<FormDraft> ofForms(Path file) {
        return new DraftsFile<>(file, new FormDraftsJson());
    }

    /** Reads what was kept. */
    public Loaded<T> load() {
        if (Files.notExists(file)) {
            return new Loaded<>(List.of(), Optional.empty());
        }
        try {
            return new Loaded<>(
                    form.read(new String(Files.readAllBytes(file), StandardCharsets.UTF_8)), Optional.empty());
        } catch (JsonProcessingException | IllegalArgumentException notUnderstood) {
            return setAside();
        } catch (IOException unreadable) {
            return inTheWay(unreadable);
        }
    }

    @Override
    public void keep(List<T> drafts) {
        if (isInTheWay) {
            throw new DocumentException(
                    DocumentException.Reason.WRITE_FAILED,
                    Texts.say("{0} could not be read, so it is left as it is.", file));
        }
        try {
            if (drafts.isEmpty()) {
                Files.deleteIfExists(file);
            } else {
                WholeFile.write(file, form.print(drafts));
            }
        } catch (IOException e) {
            throw new DocumentException(
                    DocumentException.Reason.WRITE_FAILED,
                    Texts.say("{0} cannot be written: {1}.", file, e.getMessage()),
                    e);
        }
    }

    private Loaded<T> setAside() {
        try {
            for (int number = 1; ; number++) {
                Path aside = file.resolveSibling(file.getFileName() + ".not-understood-" + number);
                if (Files.notExists(aside)) {
                    Files.move(file, aside);
                    return new Loaded<>(
                            List.of(),
                            Optional.of(
                                    Texts.say("They are kept in {0}, which can be read with any text editor.", aside)));
                }
            }
        } catch (IOException e) {
            return inTheWay(e);
        }
    }

    private Loaded<T> inTheWay(IOException fault) {
        isInTheWay = true;
        return new Loaded<>(
                List.of(),
                Optional.of(Texts.say(
                        "{0} cannot be read ({1}) and is left as it is. Until it is mended or moved away, what is "
                                + "begun is kept only once it is saved.",
                        file, fault.getMessage())));
    }

    /**
     * Drafts as they were found.
     *
     * @param problem what became of a file that was not understood, in sentences
     */
    public record Loaded<T>(List<T> drafts, Optional<String> problem) {}
}
