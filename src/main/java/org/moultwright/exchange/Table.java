package org.moultwright.exchange;

import java.util.List;

/**
 * One file of the folder: its columns, and how a row becomes a value and back.
 *
 * @param file the file's name
 * @param columns the header, in order
 * @param required the columns that must be in the header
 */
record Table<T>(String file, List<String> columns, List<String> required, FromRow<T> read, ToCells<T> write) {

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
