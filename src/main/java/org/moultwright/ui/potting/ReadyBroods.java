package org.moultwright.ui.potting;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.moultwright.workflow.BroodView;
import org.moultwright.workflow.RoomView;

/** The broods that have animals ready for pots. */
record ReadyBroods(List<BroodView> broods) {

    static ReadyBroods of(RoomView room) {
        return new ReadyBroods(room.broods().stream()
                .filter(brood -> Bench.of(brood).ready() > 0)
                .toList());
    }

    List<String> codes() {
        return broods.stream().map(BroodView::code).toList();
    }

    /** The one at the bench if it still is among them, else the one with most animals ready. */
    Optional<BroodView> next(Optional<Bench> before) {
        return broods.stream()
                .filter(brood ->
                        before.filter(bench -> bench.isOf(brood.code())).isPresent())
                .findFirst()
                .or(() -> broods.stream()
                        .max(Comparator.comparing(brood -> Bench.of(brood).ready())));
    }
}
