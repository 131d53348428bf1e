package org.moultwright.ui.broods;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.moultwright.task.Outcome;
import org.moultwright.workflow.BroodView;
import org.moultwright.workflow.RoomView;

/** A brood and the others laid beside it, each read aside, since years of readings take a moment. */
final class BroodsBeside {
    private static final int MOST = 3;

    private final BroodsDesk desk;
    private final String own;
    private final Consumer<String> problem;
    private final ObservableList<BroodFacts> facts = FXCollections.observableArrayList();
    private final ObservableList<String> chosen = FXCollections.observableArrayList();

    /**
     * @param own the code of the brood, which is read at once
     * @param problem is told why one could not be read
     */
    BroodsBeside(BroodsDesk desk, String own, Consumer<String> problem) {
        this.desk = desk;
        this.own = own;
        this.problem = problem;
        read(own);
    }

    /** What was read of the brood, and of those beside it, in that order; empty while it is being read. */
    ObservableList<BroodFacts> facts() {
        return facts;
    }

    /** What was read of the brood itself, once it is. */
    Optional<BroodFacts> own() {
        return facts.stream().filter(one -> one.brood().code().equals(own)).findFirst();
    }

    /** The other broods that can stand beside it. */
    List<String> others() {
        return room().broods().stream()
                .map(BroodView::code)
                .filter(code -> !code.equals(own))
                .toList();
    }

    /** The codes of those that do. */
    ObservableList<String> chosen() {
        return chosen;
    }

    /** Puts a brood beside this one, or takes it away. */
    void toggle(String code) {
        if (chosen.remove(code)) {
            facts.removeIf(one -> one.brood().code().equals(code));
        } else if (chosen.size() < MOST) {
            chosen.add(code);
            read(code);
        }
    }

    private void read(String code) {
        Optional<BroodView> brood = room().brood(code);
        Instant now = room().now();
        brood.ifPresent(view -> desk.waysIn()
                .intakeRunner()
                .<BroodFacts>run(progress -> BroodFacts.of(view, now), outcome -> {
                    if (outcome instanceof Outcome.Done<BroodFacts> done) {
                        show(done.value());
                    } else if (outcome instanceof Outcome.Failed<BroodFacts> failed) {
                        problem.accept(String.valueOf(failed.fault().getMessage()));
                    }
                }));
    }

    /** In the order they were asked for, whichever was read first. */
    private void show(BroodFacts read) {
        List<String> order = new ArrayList<>(List.of(own));
        order.addAll(chosen);
        List<BroodFacts> all = new ArrayList<>(facts);
        all.add(read);
        all.removeIf(one -> !order.contains(one.brood().code()));
        all.sort(Comparator.comparing(one -> order.indexOf(one.brood().code())));
        facts.setAll(all);
    }

    private RoomView room() {
        return desk.room().get();
    }
}
