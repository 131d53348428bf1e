package org.moultwright.exchange;

import java.time.DateTimeException;
import java.time.Instant;
import java.util.Optional;
import java.util.function.Function;
import org.apache.commons.csv.CSVRecord;
import org.moultwright.language.Texts;

/**
 * One row of a table, whose cells are asked for by column and form. A cell not of its form is told to the
 * problems, and the row given up by {@link Unusable}.
 */
final class Row {
    private final String file;
    private final long line;
    private final CSVRecord cells;
    private final Header header;
    private final Problems problems;

    Row(String file, long line, CSVRecord cells, Header header, Problems problems) {
        this.file = file;
        this.line = line;
        this.cells = cells;
        this.header = header;
        this.problems = problems;
    }

    long line() {
        return line;
    }

    /** Gives the row up unless it has a cell for every column, as RFC 4180 asks. */
    void requireAllCells() throws Unusable {
        if (cells.size() != header.width()) {
            tell(Texts.say("{0} cells as in the header, not {1}", header.width(), cells.size()));
            throw new Unusable();
        }
    }

    /** What stands in a column, without a mark that only shields spreadsheets; empty where there is nothing. */
    String text(String column) {
        Integer index = header.columns().get(column);
        return index == null ? "" : Shield.remove(cells.get(index));
    }

    String required(String column) throws Unusable {
        String text = text(column);
        if (text.isBlank()) {
            throw refuse(column, Texts.say("some text"));
        }
        return text;
    }

    Optional<String> optional(String column) {
        return Optional.of(text(column)).filter(text -> !text.isBlank());
    }

    Instant instant(String column) throws Unusable {
        return parse(column, Texts.say("an instant such as 2026-03-25T18:00:00Z"), Numerals::instant);
    }

    Optional<Instant> optionalInstant(String column) throws Unusable {
        return text(column).isBlank() ? Optional.empty() : Optional.of(instant(column));
    }

    int count(String column, int least) throws Unusable {
        String expected = "a whole number of at least " + least;
        int count = parse(column, expected, Numerals::count);
        if (count < least) {
            throw refuse(column, expected);
        }
        return count;
    }

    double number(String column, double lowest, double highest) throws Unusable {
        String expected = "a number within %s and %s".formatted(lowest, highest);
        double number = parse(column, expected, Numerals::number);
        if (number < lowest || number > highest) {
            throw refuse(column, expected);
        }
        return number;
    }

    /** The number in a column, or {@code otherwise} where the column is empty. */
    double numberOr(String column, double lowest, double highest, double otherwise) throws Unusable {
        return text(column).isBlank() ? otherwise : number(column, lowest, highest);
    }

    /** One of a few words. */
    <T> T oneOf(String column, String expected, Function<String, Optional<T>> meaning) throws Unusable {
        Optional<T> found = meaning.apply(text(column));
        if (found.isEmpty()) {
            throw refuse(column, expected);
        }
        return found.get();
    }

    /** Tells that this cell is not as expected; the caller throws what comes back, to give the row up. */
    Unusable refuse(String column, String expected) {
        problems.add(file, line, column, text(column), expected);
        return new Unusable();
    }

    /** Tells what is wrong with the row as a whole. */
    void tell(String expected) {
        problems.add(file, line, "", "", expected);
    }

    private <T> T parse(String column, String expected, Function<String, T> form) throws Unusable {
        try {
            return form.apply(text(column));
        } catch (DateTimeException | NumberFormatException notOfThisForm) {
            throw refuse(column, expected);
        }
    }

    /** The row has been told of and cannot be used. */
    static final class Unusable extends Exception {
        private static final long serialVersionUID = 1L;

        Unusable() {
            super("the row was told of as a problem");
        }
    }
}
