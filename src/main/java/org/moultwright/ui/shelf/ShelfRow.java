package org.moultwright.ui.shelf;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.moultwright.workflow.ShelfAt;
import org.moultwright.workflow.Standing;

/**
 * One row of the shelf as it is laid out: the head or the foot of a container that holds something, or cards side by
 * side.
 *
 * @param part which of these it is
 * @param frames the codes of the containers it is drawn in, the outermost first; a head's or a foot's own is the last
 * @param cards the cards of the row, or the head's container alone
 */
record ShelfRow(Part part, List<String> frames, List<Standing> cards) {
    /** What a row is. */
    enum Part {
        HEAD,
        CARDS,
        FOOT
    }

    /** The rows of a shelf, at most so many cards side by side. */
    static List<ShelfRow> of(ShelfAt shelf, int columns) {
        List<ShelfRow> rows = new ArrayList<>();
        lay(rows, List.of(), shelf.outermost(), columns);
        return rows;
    }

    boolean holds(String code) {
        return part != Part.FOOT && cards.stream().anyMatch(card -> card.code().equals(code));
    }

    private static void lay(List<ShelfRow> rows, List<String> around, List<Standing> inside, int columns) {
        List<Standing> holding =
                inside.stream().filter(one -> !one.contents().isEmpty()).toList();
        List<Standing> leaves =
                inside.stream().filter(one -> one.contents().isEmpty()).toList();
        Stream.iterate(0, from -> from < leaves.size(), from -> from + columns)
                .forEach(from -> rows.add(new ShelfRow(
                        Part.CARDS, around, leaves.subList(from, Math.min(from + columns, leaves.size())))));
        for (Standing one : holding) {
            List<String> frames =
                    Stream.concat(around.stream(), Stream.of(one.code())).toList();
            rows.add(new ShelfRow(Part.HEAD, frames, List.of(one)));
            lay(rows, frames, one.contents(), columns);
            rows.add(new ShelfRow(Part.FOOT, frames, List.of()));
        }
    }
}
