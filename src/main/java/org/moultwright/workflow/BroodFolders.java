package org.moultwright.workflow;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.moultwright.domain.BroodRecord;

/** Brood folders, format 1: the open plain-text form of one brood. */
public interface BroodFolders {

    /** Reads a folder or a zip of one without its readings, and checks every row of it, readings too. */
    FolderContent read(Path folder);

    /**
     * Writes a brood, whole or not at all.
     *
     * @param record the brood; its own readings are ignored in favour of {@code readings}
     * @param readings hands over the readings, probe by probe, while the folder is written
     * @throws IllegalArgumentException if {@code folder} exists and is not empty
     */
    void write(BroodRecord record, ReadingSource readings, Path folder);

    /** The same with the readings the record holds. */
    default void write(BroodRecord record, Path folder) {
        write(record, ReadingSource.of(record), folder);
    }

    /**
     * What a folder holds.
     *
     * @param record the brood without readings, empty if there are problems
     * @param readings its readings, to be streamed or gathered
     * @param problems what must be mended before it can be taken in, in order of file and line
     * @param notices what was passed over or assumed, and questions left open
     * @param pictures the pictures of its photos
     */
    record FolderContent(
            Optional<BroodRecord> record,
            ReadingSource readings,
            List<FolderProblem> problems,
            List<String> notices,
            Pictures pictures) {
        public FolderContent {
            problems = List.copyOf(problems);
            notices = List.copyOf(notices);
        }
    }

    /** The pictures in a folder. */
    @FunctionalInterface
    interface Pictures {
        /** The bytes of a photo's picture; may throw {@link java.io.UncheckedIOException}. */
        byte[] read(String file);
    }

    /**
     * One thing wrong in a folder.
     *
     * @param file the file's name within the folder
     * @param line its line, counted from 1; 0 where the whole file is meant
     * @param column the column's header name or a position, possibly empty
     * @param value what stands there, possibly empty
     * @param expected what was expected instead
     */
    record FolderProblem(String file, long line, String column, String value, String expected) {}
}
