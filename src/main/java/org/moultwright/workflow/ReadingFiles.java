package org.moultwright.workflow;

import java.nio.charset.Charset;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.moultwright.domain.Reading;

/** Files of readings as loggers and spreadsheets leave them, in columns. */
public interface ReadingFiles {

    /**
     * Proposes how to understand a file, by looking at its beginning.
     *
     * @throws DocumentException if it cannot be read
     */
    ReadingMapping propose(Path file, ZoneId zone);

    /** A mapping for a file as if it were of this text with this delimiter. */
    ReadingMapping propose(Path file, ZoneId zone, Charset charset, char delimiter);

    /**
     * The first rows of a file as a mapping understands them.
     *
     * @throws DocumentException if it cannot be read
     */
    List<Row> first(Path file, ReadingMapping mapping, int rows);

    /**
     * Hands over every row of a file as a mapping understands it, in the file's order.
     *
     * @param read is told the row, and how much of the file was read by then, within [0, 1]
     * @throws DocumentException if it cannot be read
     */
    void each(Path file, ReadingMapping mapping, Sink read);

    /** Takes rows one by one. */
    @FunctionalInterface
    interface Sink {
        void accept(Row row, double share);
    }

    /**
     * One row of a file.
     *
     * @param line where it stands, from 1
     * @param cells what stands in it
     * @param reading what it means, empty where it means none
     * @param reason why it means none, in a sentence; empty where it means one, or stands before the readings
     */
    record Row(long line, List<String> cells, Optional<Reading> reading, String reason) {
        public Row {
            cells = List.copyOf(cells);
        }
    }
}
