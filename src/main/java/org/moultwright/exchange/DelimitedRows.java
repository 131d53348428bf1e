package org.moultwright.exchange;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.util.Iterator;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Rows of cells between any delimiter, quoted or not, each with its line. Empty lines are passed over. */
final class DelimitedRows {
    private DelimitedRows() {}

    /**
     * Hands over row after row until there is none, or none is wanted any more.
     *
     * @throws IOException if the text cannot be read, or a row is too long to be one
     */
    static void each(Reader text, char delimiter, Sink sink) throws IOException {
        PlainText bounded = PlainText.of(text);
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setDelimiter(delimiter)
                .setIgnoreEmptyLines(true)
                .setTrailingData(true)
                .setLenientEof(true)
                .get();
        try (CSVParser parser =
                CSVParser.builder().setReader(bounded).setFormat(format).get()) {
            Iterator<CSVRecord> records = parser.iterator();
            boolean isWanted = true;
            while (isWanted && records.hasNext()) {
                CSVRecord record = records.next();
                bounded.nextRow();
                isWanted = sink.accept(parser.getCurrentLineNumber(), record.toList());
            }
        } catch (UncheckedIOException fault) {
            throw new IOException(fault.getMessage(), fault);
        }
    }

    /** Takes rows one by one. */
    @FunctionalInterface
    interface Sink {
        /** Takes a row and says whether another is wanted. */
        boolean accept(long line, List<String> cells);
    }
}
