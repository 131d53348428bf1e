package org.moultwright.ui.potting;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.moultwright.domain.Stage;
import org.moultwright.workflow.BroodView;
import org.moultwright.workflow.RoomView;

/** The broods that have animals ready for pots. */
record ReadyBroods(List<BroodView> broods) {
    /** More trays than this are laid on the bench only where the keeper asks for them. */
    private static final int MOST_TRAYS_UNASKED = 24;

    static ReadyBroods of(RoomView room) {
        return new ReadyBroods(
                room.broods().stream().filter(brood -> ready(brood) > 0).toList());
    }

    List<String> codes() {
        return broods.stream().map(BroodView::code).toList();
    }

    List<BroodView> chosen(Set<String> codes) {
        return broods.stream().filter(brood -> codes.contains(brood.code())).toList();
    }

    /** As many as fit on a bench, at least one; those with most animals ready go first. */
    List<BroodView> unasked() {
        Set<String> fitting = new HashSet<>();
        int trays = 0;
        for (BroodView brood : broods.stream()
                .sorted(Comparator.comparing(ReadyBroods::ready).reversed())
                .toList()) {
            trays += brood.trays().size();
            if (fitting.isEmpty() || trays <= MOST_TRAYS_UNASKED) {
                fitting.add(brood.code());
            }
        }
        return chosen(fitting);
    }

    private static int ready(BroodView brood) {
        Stage stage = brood.record().brood().lastStage();
        return brood.trays().stream()
                .mapToInt(tray -> Math.min(tray.alive(), tray.composition().getOrDefault(stage, 0)))
                .sum();
    }
}
