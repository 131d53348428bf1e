package org.moultwright.ui.shelf;

import java.util.List;
import java.util.Optional;
import org.moultwright.workflow.Standing;

/** Where arrow keys lead from a card: along the shelf as it is laid out. */
record ShelfFocus(List<ShelfRow> rows) {
    /** The card so many after another, the last or first at the ends. */
    Optional<String> along(String from, int steps) {
        List<String> codes = rows.stream()
                .filter(row -> row.part() != ShelfRow.Part.FOOT)
                .flatMap(row -> row.cards().stream().map(Standing::code))
                .toList();
        if (codes.isEmpty()) {
            return Optional.empty();
        }
        int at = codes.indexOf(from);
        int to = at < 0 ? 0 : Math.max(0, Math.min(codes.size() - 1, at + steps));
        return Optional.of(codes.get(to));
    }

    /** The card in the next row that has any, beneath or above another. */
    Optional<String> across(String from, int direction) {
        int row = rowOf(from);
        if (row < 0) {
            return along(from, 0);
        }
        int column = columnOf(rows.get(row), from);
        for (int next = row + direction; next >= 0 && next < rows.size(); next += direction) {
            ShelfRow candidate = rows.get(next);
            if (candidate.part() != ShelfRow.Part.FOOT) {
                int there = Math.min(column, candidate.cards().size() - 1);
                return Optional.of(candidate.cards().get(there).code());
            }
        }
        return Optional.of(from);
    }

    /** The row a card is in, or -1. */
    int rowOf(String code) {
        for (int row = 0; row < rows.size(); row++) {
            if (rows.get(row).holds(code)) {
                return row;
            }
        }
        return -1;
    }

    private static int columnOf(ShelfRow row, String code) {
        return row.cards().stream().map(Standing::code).toList().indexOf(code);
    }
}
