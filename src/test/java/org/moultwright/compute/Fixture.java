package org.moultwright.compute;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** A table of reference values beside the tests; its first line is a comment that names where they come from. */
public final class Fixture {
    private static final CSVFormat FORMAT = CSVFormat.RFC4180
            .builder()
            .setCommentMarker('#')
            .setHeader()
            .setSkipHeaderRecord(true)
            .get();

    private final String path;
    private final List<CSVRecord> rows;

    private Fixture(String path, List<CSVRecord> rows) {
        this.path = path;
        this.rows = rows;
    }

    /** The fixture at a path below this package's resources. */
    public static Fixture at(String path) {
        try (Reader reader = new InputStreamReader(
                Objects.requireNonNull(Fixture.class.getResourceAsStream(path), path), StandardCharsets.UTF_8)) {
            return new Fixture(path, FORMAT.parse(reader).getRecords());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public List<CSVRecord> rows() {
        return rows;
    }

    /** The value of a row of a table with the columns case, quantity and value. */
    public double value(String name, String quantity) {
        return rows.stream()
                .filter(row ->
                        row.get("case").equals(name) && row.get("quantity").equals(quantity))
                .map(row -> number(row.get("value")))
                .findFirst()
                .orElseThrow(() -> new AssertionError(path + " holds no " + name + " " + quantity));
    }

    private static double number(String written) {
        return written.equals("inf") ? Double.POSITIVE_INFINITY : Double.parseDouble(written);
    }
}
