package org.moultwright.ui.shelf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.moultwright.workflow.ShelfAt;
import org.moultwright.workflow.Standing;

/**
 * One row of the shelf as it is laid out: the head or the foot of a container that holds something, or cards side by
 * side.
 *
 * @param part which of these it is
 * @param depth how many containers are around it
 * @param container the container it belongs to; empty for cards that stand in nothing
 * @param cards the cards of the row, or the head's container alone
 */
record ShelfRow(Part part, int depth, Optional<Standing> container, List<Standing> cards) {
    /** What a row is. */
    enum Part {
        HEAD,
        CARDS,
        FOOT
    }

    /** The rows of a shelf, at most so many cards side by side. */
    static List<ShelfRow> of(ShelfAt shelf, int columns) {
        List<ShelfRow> rows = new ArrayList<>();
        lay(rows, Optional.empty(), shelf.outermost(), 0, columns);
        return rows;
    }

    boolean holds(String code) {
        return part != Part.FOOT && cards.stream().anyMatch(card -> card.code().equals(code));
    }

    private static void lay(
            List<ShelfRow> rows, Optional<Standing> container, List<Standing> inside, int depth, int columns) {
        List<Standing> holding =
                inside.stream().filter(one -> !one.contents().isEmpty()).toList();
        List<Standing> leaves =
                inside.stream().filter(one -> one.contents().isEmpty()).toList();
        Stream.iterate(0, from -> from < leaves.size(), from -> from + columns)
                .forEach(from -> rows.add(new ShelfRow(
                        Part.CARDS, depth, container, leaves.subList(from, Math.min(from + columns, leaves.size())))));
        for (Standing one : holding) {
            rows.add(new ShelfRow(Part.HEAD, depth, Optional.of(one), List.of(one)));
            lay(rows, Optional.of(one), one.contents(), depth + 1, columns);
            rows.add(new ShelfRow(Part.FOOT, depth, Optional.of(one), List.of()));
        }
    }
}
