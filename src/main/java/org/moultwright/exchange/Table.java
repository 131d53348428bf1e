package org.moultwright.exchange;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;

/**
 * One file of the folder: its columns, and how a row becomes a value and back.
 *
 * @param file the file's name
 * @param columns the header, in order
 * @param required the columns that must be in the header
 * @param time the instant by which rows are put in order
 */
record Table<T>(
        String file,
        List<String> columns,
        List<String> required,
        Function<T, Instant> time,
        FromRow<T> read,
        ToCells<T> write) {

    /** Values in the one order in which they are written: by time, then by what stands in their cells. */
    List<T> sorted(Collection<T> values) {
        return values.stream()
                .sorted(Comparator.comparing(time).thenComparing(value -> String.join("\n", write.cells(value))))
                .toList();
    }

    /** This table without one of its columns, for where nothing stands in it. */
    Table<T> without(String column) {
        int index = columns.indexOf(column);
        return new Table<>(
                file, without(columns, index), required, time, read, value -> without(write.cells(value), index));
    }

    private static List<String> without(List<String> cells, int index) {
        List<String> others = new ArrayList<>(cells);
        others.remove(index);
        return List.copyOf(others);
    }

    /** Makes a value of a row. */
    @FunctionalInterface
    interface FromRow<T> {
        T read(Row row) throws Row.Unusable;
    }

    /** Makes the cells of a value, in the order of the columns. */
    @FunctionalInterface
    interface ToCells<T> {
        List<String> cells(T value);
    }
}
