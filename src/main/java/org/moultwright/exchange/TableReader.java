package org.moultwright.exchange;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.moultwright.language.Texts;

/** Reads tables row by row, telling of every row that is not as it should be. */
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

    <T> List<Placed<T>> all(Table<T> table) {
        List<Placed<T>> rows = new ArrayList<>();
        each(table, rows::add);
        return rows;
    }

    /** Hands every sound row of a table to {@code sink}; a missing file has none. */
    <T> void each(Table<T> table, Consumer<Placed<T>> sink) {
        try (InputStream content = files.open(table.file()).orElse(null)) {
            if (content != null) {
                read(table, PlainText.open(content), sink);
            }
        } catch (CharacterCodingException notText) {
            problems.add(
                    table.file(), Utf8Lines.firstMalformed(files, table.file()), "", "", Texts.say("text in UTF-8"));
        } catch (IOException fault) {
            problems.add(table.file(), 0, "", "", Texts.say("a file that can be read; {0}", fault.getMessage()));
        }
    }

    private <T> void read(Table<T> table, PlainText text, Consumer<Placed<T>> sink) throws IOException {
        long lastLine = 0;
        try (CSVParser parser =
                CSVParser.builder().setReader(text).setFormat(RFC_4180).get()) {
            Iterator<CSVRecord> records = parser.iterator();
            if (!records.hasNext()) {
                problems.add(
                        table.file(), 1, "", "", Texts.say("a header row: {0}", String.join(",", table.columns())));
                return;
            }
            Optional<Header> header = Header.read(table, records.next(), problems);
            lastLine = parser.getCurrentLineNumber();
            while (header.isPresent() && records.hasNext()) {
                CSVRecord cells = records.next();
                text.nextRow();
                lastLine = parser.getCurrentLineNumber();
                long line = lastLine - breaksInside(cells);
                row(table, new Row(table.file(), line, cells, header.get(), problems), sink);
            }
        } catch (UncheckedIOException fault) {
            if (fault.getCause() instanceof CharacterCodingException notText) {
                throw notText;
            }
            problems.add(table.file(), lastLine + 1, "", "", Texts.say("a table by RFC 4180; {0}", fault.getMessage()));
        }
    }

    private static <T> void row(Table<T> table, Row row, Consumer<Placed<T>> sink) {
        try {
            row.requireAllCells();
            sink.accept(new Placed<>(row.line(), table.read().read(row)));
        } catch (Row.Unusable alreadyTold) {
            // The row has told its problem; the next one may have another.
        } catch (IllegalArgumentException broken) {
            row.tell(String.valueOf(broken.getMessage()));
        }
    }

    private static long breaksInside(CSVRecord cells) {
        long breaks = 0;
        for (String cell : cells) {
            breaks += cell.indexOf('\n') < 0
                    ? 0
                    : cell.chars().filter(c -> c == '\n').count();
        }
        return breaks;
    }

    /** A value and the line it was read from. */
    record Placed<T>(long line, T value) {}
}
