package org.moultwright.exchange;

import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Reads a table row by row, telling of every row that is not as it should be. */
final class TableReader {
    private static final CSVFormat RFC_4180 = CSVFormat.RFC4180
            .builder()
            .setIgnoreEmptyLines(true)
            .setLenientEof(false)
            .get();

    private final FolderFiles files;
    private final Problems problems;

    TableReader(FolderFiles files, Problems problems) {
        this.files = files;
        this.problems = problems;
    }

    <T> List<T> all(Table<T> table) throws IOException {
        List<T> values = new ArrayList<>();
        each(table, values::add);
        return values;
    }

    /** Hands every sound row of a table to {@code sink}; a missing file has none. */
    <T> void each(Table<T> table, Consumer<T> sink) throws IOException {
        Optional<InputStream> content = files.open(table.file());
        if (content.isEmpty()) {
            return;
        }
        try (Reader reader = PlainText.open(content.get());
                CSVParser parser = CSVParser.builder()
                        .setReader(reader)
                        .setFormat(RFC_4180)
                        .get()) {
            read(table, parser, sink);
        }
    }

    private <T> void read(Table<T> table, CSVParser parser, Consumer<T> sink) throws IOException {
        long line = 1;
        try {
            Iterator<CSVRecord> records = parser.iterator();
            if (!records.hasNext()) {
                problems.add(table.file(), 1, "", "", "a header row: " + String.join(",", table.columns()));
                return;
            }
            Optional<Map<String, Integer>> columns = header(table, records.next());
            if (columns.isEmpty()) {
                return;
            }
            line = parser.getCurrentLineNumber() + 1;
            while (records.hasNext()) {
                CSVRecord cells = records.next();
                row(table, new Row(table.file(), line, cells, columns.get(), problems), sink);
                line = parser.getCurrentLineNumber() + 1;
            }
        } catch (UncheckedIOException fault) {
            problems.add(table.file(), line, "", "", expectedInsteadOf(fault));
        }
    }

    private static <T> void row(Table<T> table, Row row, Consumer<T> sink) {
        try {
            sink.accept(table.read().read(row));
        } catch (Row.Unusable alreadyTold) {
            // The row has told its problem; the next one may have another.
        } catch (IllegalArgumentException broken) {
            row.tell(String.valueOf(broken.getMessage()));
        }
    }

    private <T> Optional<Map<String, Integer>> header(Table<T> table, CSVRecord header) {
        Map<String, Integer> columns = new HashMap<>();
        boolean sound = true;
        for (int i = 0; i < header.size(); i++) {
            String name = header.get(i).strip();
            if (columns.putIfAbsent(name, i) != null) {
                problems.add(table.file(), 1, name, name, "each column once");
                sound = false;
            }
            if (!table.columns().contains(name)) {
                problems.notice("%s: the column '%s' is not part of the format and was passed over"
                        .formatted(table.file(), name));
            }
        }
        for (String needed : table.required()) {
            if (!columns.containsKey(needed)) {
                problems.add(table.file(), 1, needed, "", "a column of this name in the header");
                sound = false;
            }
        }
        return sound ? Optional.of(columns) : Optional.empty();
    }

    private static String expectedInsteadOf(UncheckedIOException fault) {
        return fault.getCause() instanceof CharacterCodingException
                ? "text in UTF-8"
                : "a table by RFC 4180; " + fault.getMessage();
    }
}
