package org.moultwright.store.book;

import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.moultwright.domain.Require;
import org.moultwright.domain.Span;
import org.moultwright.store.sql.Cells;
import org.moultwright.store.sql.RowReader;
import org.moultwright.store.sql.Rows;

/**
 * A table of spans in the room's life, shared by its broods: each brood names the rows that matter to it.
 *
 * @param <T> what a row says
 */
abstract class PlaceTable<T> {
    private final String name;

    PlaceTable(String name) {
        this.name = name;
    }

    abstract Cells cells(T row);

    abstract RowReader<T> reader();

    abstract Span span(T row);

    abstract T withSpan(T row, Span span);

    /** What can be true only once from one instant on, such as a container. */
    abstract Object subject(T row);

    /** Makes sure that what a row refers to is there. */
    void prepare(Handle handle, T row) {}

    final List<T> ofBrood(Handle handle, String brood) {
        return stored(handle, brood).stream().map(Stored::row).toList();
    }

    /** The rows of all broods, in the order written. */
    final List<T> all(Handle handle) {
        return handle.createQuery("select * from " + name + " order by row_no")
                .map(reader().mapper())
                .list();
    }

    /**
     * Takes in a brood's rows: what is there stays, an end that was open may become known.
     *
     * @return how many rows were added, named or given their end
     * @throws IllegalArgumentException if the brood knows a subject otherwise from the same instant on
     */
    final int takeIn(Handle handle, String brood, List<T> rows) {
        List<Stored<T>> own = stored(handle, brood);
        int changes = 0;
        for (T row : rows) {
            Optional<Stored<T>> known =
                    own.stream().filter(stored -> sameButEnd(stored.row(), row)).findFirst();
            if (known.isPresent()) {
                changes += endIfNowKnown(handle, known.get(), span(row));
            } else {
                own.forEach(stored -> requireNoContradiction(stored.row(), row));
                addToBrood(handle, brood, rowNumber(handle, row));
                changes++;
            }
        }
        return changes;
    }

    static Cells cells(Span span) {
        return new Cells().with("from_at", span.from()).with("until_at", span.to());
    }

    static RowReader<Span> spanReader() {
        return row -> new Span(row.instant("from_at"), row.optionalInstant("until_at"));
    }

    private boolean sameButEnd(T one, T other) {
        boolean sameEnd = span(one).to().equals(span(other).to());
        boolean oneIsOpen = span(one).to().isEmpty() || span(other).to().isEmpty();
        return (sameEnd || oneIsOpen)
                && span(one).from().equals(span(other).from())
                && withSpan(one, span(other)).equals(other);
    }

    private void requireNoContradiction(T stored, T row) {
        Require.that(
                !subject(stored).equals(subject(row))
                        || !span(stored).from().equals(span(row).from()),
                "the store knows " + stored + ", not " + row);
    }

    private int endIfNowKnown(Handle handle, Stored<T> known, Span span) {
        if (span(known.row()).to().equals(span.to()) || span.to().isEmpty()) {
            return 0;
        }
        String sql = "update " + name + " set until_at = :until_at where row_no = :row_no";
        try (var update = handle.createUpdate(sql)) {
            new Cells()
                    .with("until_at", span.to())
                    .with("row_no", known.rowNo())
                    .bindTo(update);
            return update.execute();
        }
    }

    /** The number of an equal row of any brood, or of a new one. */
    private long rowNumber(Handle handle, T row) {
        Optional<Long> known = sameStart(handle, row).stream()
                .filter(stored -> stored.row().equals(row))
                .map(Stored::rowNo)
                .findFirst();
        return known.orElseGet(() -> {
            prepare(handle, row);
            Rows.insert(handle, name, List.of(cells(row)));
            List<Stored<T>> stored = sameStart(handle, row);
            return stored.get(stored.size() - 1).rowNo();
        });
    }

    private void addToBrood(Handle handle, String brood, long rowNo) {
        boolean isThere =
                handle.createQuery("select count(*) from brood_" + name + " where brood = :brood and place = :place")
                                .bind("brood", brood)
                                .bind("place", rowNo)
                                .mapTo(Integer.class)
                                .one()
                        > 0;
        if (!isThere) {
            Rows.insert(
                    handle,
                    "brood_" + name,
                    List.of(new Cells().with("brood", brood).with("place", rowNo)));
        }
    }

    private List<Stored<T>> sameStart(Handle handle, T row) {
        String sql = "select * from " + name + " where from_at = :from_at order by row_no";
        try (var query = handle.createQuery(sql)) {
            new Cells().with("from_at", span(row).from()).bindTo(query);
            return query.map(storedReader().mapper()).list();
        }
    }

    private List<Stored<T>> stored(Handle handle, String brood) {
        return handle.createQuery("select place.* from brood_%1$s named join %1$s place on named.place = place.row_no"
                                .formatted(name)
                        + " where named.brood = :brood order by named.row_no")
                .bind("brood", brood)
                .map(storedReader().mapper())
                .list();
    }

    private RowReader<Stored<T>> storedReader() {
        RowReader<T> reader = reader();
        return row -> new Stored<>(row.number("row_no"), reader.read(row));
    }

    private record Stored<T>(long rowNo, T row) {}
}
