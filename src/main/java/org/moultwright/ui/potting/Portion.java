package org.moultwright.ui.potting;

import java.util.OptionalInt;
import java.util.stream.Stream;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/**
 * Animals of one tray for pots of one size: how many are taken, how many of them really went into pots, how many died or
 * were lost. Until the keeper writes another number, all taken and not lost are potted.
 */
final class Portion {
    private final ObjectProperty<OptionalInt> taken;
    private final ObjectProperty<OptionalInt> potted;
    private final ObjectProperty<OptionalInt> lost = new SimpleObjectProperty<>(OptionalInt.of(0));
    private final StringProperty potSize = new SimpleStringProperty("");
    private boolean takenByHand;
    private boolean pottedByHand;
    private boolean following;

    Portion(int taken) {
        this.taken = new SimpleObjectProperty<>(OptionalInt.of(taken));
        this.potted = new SimpleObjectProperty<>(OptionalInt.of(taken));
        this.taken.addListener((observed, before, now) -> {
            takenByHand |= !following;
            follow();
        });
        lost.addListener((observed, before, now) -> follow());
        potted.addListener((observed, before, now) -> pottedByHand |= !following);
    }

    /** Calls back at every change of what is on the bench. */
    void whenChanged(Runnable action) {
        Stream.of(taken, potted, lost).forEach(number -> number.addListener((o, before, now) -> action.run()));
        potSize.addListener((o, before, now) -> action.run());
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

    /** The size of these pots, where it is not that of the others. */
    StringProperty potSizeProperty() {
        return potSize;
    }

    /** The size of its pots: its own, else that of all. */
    String potSize(String ofAll) {
        return (potSize.get().isBlank() ? ofAll : potSize.get()).strip();
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
        return taken() == potted() + lost();
    }

    /** Takes so many, unless the keeper said how many. */
    void takeUnlessSaid(int number) {
        if (!takenByHand) {
            following = true;
            taken.set(OptionalInt.of(number));
            following = false;
        }
    }

    private void follow() {
        if (!pottedByHand) {
            boolean before = following;
            following = true;
            potted.set(OptionalInt.of(Math.max(0, taken() - lost())));
            following = before;
        }
    }
}
