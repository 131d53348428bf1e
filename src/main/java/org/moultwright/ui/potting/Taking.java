package org.moultwright.ui.potting;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.ToIntFunction;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import org.moultwright.domain.Brood;
import org.moultwright.domain.Stage;
import org.moultwright.workflow.BroodView;
import org.moultwright.workflow.TrayView;

/**
 * One tray at the bench, and the portions its animals are taken in, one for each size of pots. Until the keeper writes
 * another number, all that are ready are taken: those no other portion takes, by the first.
 */
final class Taking {
    private final BroodView brood;
    private final TrayView tray;
    private final List<Portion> portions = new ArrayList<>();
    private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");
    private final Runnable changed;

    /** @param changed is told of every change */
    Taking(BroodView brood, TrayView tray, Runnable changed) {
        this.brood = brood;
        this.tray = tray;
        this.changed = changed;
        put(new Portion(ready()));
    }

    Brood brood() {
        return brood.record().brood();
    }

    TrayView tray() {
        return tray;
    }

    Stage stage() {
        return brood().lastStage();
    }

    List<Portion> portions() {
        return Collections.unmodifiableList(portions);
    }

    /** Begins a portion for pots of another size. */
    void addPortion() {
        put(new Portion(0));
    }

    /** Animals that have reached the stage in which they are potted, by the last look. */
    int ready() {
        return Math.min(tray.alive(), tray.composition().getOrDefault(stage(), 0));
    }

    /** The day the animals were last seen in their stage; where they never were, today. */
    Instant seen(Instant now) {
        Optional<Instant> look = ready() > 0 ? tray.lastLook() : Optional.empty();
        return look.orElse(now);
    }

    /** What is wrong with the numbers taken, in a sentence; empty when nothing is. */
    ReadOnlyStringProperty problemProperty() {
        return problem.getReadOnlyProperty();
    }

    int taken() {
        return sum(Portion::taken);
    }

    int potted() {
        return sum(Portion::potted);
    }

    int lost() {
        return sum(Portion::lost);
    }

    /** Whether no animal is taken that is not there. */
    boolean takesWhatIsThere() {
        return problem.get().isEmpty();
    }

    boolean holdsTogether() {
        return takesWhatIsThere() && portions.stream().allMatch(Portion::holdsTogether);
    }

    boolean isOf(TrayView other) {
        return tray.equals(other);
    }

    private void put(Portion portion) {
        portions.add(portion);
        portion.whenChanged(this::follow);
    }

    private void follow() {
        Portion first = portions.get(0);
        first.takeUnlessSaid(Math.max(0, ready() - taken() + first.taken()));
        problem.set(taken() > tray.alive() ? PottingWords.tooMany(tray) : "");
        changed.run();
    }

    private int sum(ToIntFunction<Portion> number) {
        return portions.stream().mapToInt(number).sum();
    }
}
