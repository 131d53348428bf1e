package org.moultwright.ui.potting;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.moultwright.ui.label.SheetForm;

/**
 * The sheets that labels go on: one stack for all, and one of its own for each size of pots that the keeper gave one. A
 * stack stays as it was begun while the desk is open, whether or not such pots are on the bench.
 */
final class BenchSheets {
    private final Supplier<SheetWay> ways;
    private final SheetWay common;
    private final Map<String, SheetWay> own = new HashMap<>();
    private final Map<String, SheetWay> putAway = new HashMap<>();

    /** @param ways makes one that is looked after */
    BenchSheets(Supplier<SheetWay> ways) {
        this.ways = ways;
        this.common = ways.get();
    }

    SheetWay common() {
        return common;
    }

    SheetWay of(String size) {
        return own.getOrDefault(size, common);
    }

    boolean isOwn(String size) {
        return own.containsKey(size);
    }

    /** Gives pots of a size their own stack, or puts them on that of all again. */
    void setOwn(String size, boolean isOwn) {
        if (isOwn) {
            own.put(size, Optional.ofNullable(putAway.remove(size)).orElseGet(this::begun));
        } else {
            Optional.ofNullable(own.remove(size)).ifPresent(way -> putAway.put(size, way));
        }
    }

    /** Those that labels of these sizes go on, each once, in the order of the sizes. */
    List<SheetWay> of(Collection<String> sizes) {
        return sizes.stream().map(this::of).distinct().toList();
    }

    /** The printer is off by as much, whatever the sheet. */
    private SheetWay begun() {
        SheetWay way = ways.get();
        SheetForm from = common.form();
        way.form().shiftRightProperty().set(from.shiftRightProperty().get());
        way.form().shiftDownProperty().set(from.shiftDownProperty().get());
        return way;
    }
}
