package org.moultwright.ui.potting;

import java.util.OptionalInt;
import javafx.beans.InvalidationListener;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import org.moultwright.domain.Stage;
import org.moultwright.workflow.TrayView;

/**
 * One tray at the bench: how many are taken, how many of them really went into pots, how many died or were
 * lost. Until the keeper writes another number, all that are ready are taken, and all taken and not lost are
 * potted.
 */
final class Taking {
    private final TrayView tray;
    private final Stage stage;
    private final ObjectProperty<OptionalInt> taken;
    private final ObjectProperty<OptionalInt> potted;
    private final ObjectProperty<OptionalInt> lost = new SimpleObjectProperty<>(OptionalInt.of(0));
    private final StringProperty potSize = new SimpleStringProperty("");
    private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");
    private boolean pottedByHand;
    private boolean following;

    Taking(TrayView tray, Stage stage) {
        this.tray = tray;
        this.stage = stage;
        this.taken = new SimpleObjectProperty<>(OptionalInt.of(ready()));
        this.potted = new SimpleObjectProperty<>(OptionalInt.of(ready()));
        InvalidationListener follow = changed -> follow();
        taken.addListener(follow);
        lost.addListener(follow);
        potted.addListener((observed, before, now) -> pottedByHand |= !following);
    }

    TrayView tray() {
        return tray;
    }

    /** Animals that have reached the stage in which they are potted, by the last look. */
    int ready() {
        return Math.min(tray.alive(), tray.composition().getOrDefault(stage, 0));
    }

    ObjectProperty<OptionalInt> takenProperty() {
        return taken;
    }

    ObjectProperty<OptionalInt> pottedProperty() {
        return potted;
    }

    ObjectProperty<OptionalInt> lostProperty() {
        return lost;
    }

    /** The size of the pots for this tray's animals, where it is not that of the others. */
    StringProperty potSizeProperty() {
        return potSize;
    }

    /** The size of its pots: its own, else that of all. */
    String potSize(String ofAll) {
        return (potSize.get().isBlank() ? ofAll : potSize.get()).strip();
    }

    /** What is wrong with the number taken, in a sentence; empty when nothing is. */
    ReadOnlyStringProperty problemProperty() {
        return problem.getReadOnlyProperty();
    }

    int taken() {
        return taken.get().orElse(0);
    }

    int potted() {
        return potted.get().orElse(0);
    }

    int lost() {
        return lost.get().orElse(0);
    }

    boolean holdsTogether() {
        return problem.get().isEmpty() && taken() == potted() + lost();
    }

    private void follow() {
        problem.set(taken() > tray.alive() ? PottingWords.tooMany(tray) : "");
        if (!pottedByHand) {
            following = true;
            potted.set(OptionalInt.of(Math.max(0, taken() - lost())));
            following = false;
        }
    }
}
