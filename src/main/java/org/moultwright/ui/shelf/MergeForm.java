package org.moultwright.ui.shelf;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;
import org.moultwright.language.Texts;
import org.moultwright.workflow.Deed;
import org.moultwright.workflow.ShareTrays;
import org.moultwright.workflow.ShelfAt;
import org.moultwright.workflow.Standing;
import org.moultwright.workflow.Standing.Occupants;

/** All animals of a tray to be put into another. */
final class MergeForm extends ShelfForm {
    private final ShelfDesk desk;
    private ShelfAt shelf;
    private final Standing tray;
    private final String brood;
    private final Targets targets;
    private final BooleanProperty putAway = new SimpleBooleanProperty(true);

    MergeForm(ShelfDesk desk, ShelfAt shelf, Standing tray, Occupants occupants) {
        super(Texts.say("Join {0} with another tray", tray.code()), Texts.say("Join"));
        this.desk = desk;
        this.shelf = shelf;
        this.tray = tray;
        this.brood = occupants.brood();
        this.targets = new Targets(fitting());
    }

    /** What was a tray to join with may be none by now. */
    @Override
    void see(ShelfAt read) {
        shelf = read;
        targets.offer(fitting());
    }

    Targets targets() {
        return targets;
    }

    /** Whether the tray left empty is put away. */
    BooleanProperty putAwayProperty() {
        return putAway;
    }

    @Override
    Optional<Supplier<Deed.Summary>> filledIn() {
        Optional<String> into = leadsTo();
        return into.isEmpty()
                ? refuse(targets.typedProperty(), whyNot())
                : accept(() -> desk.share().merge(brood, tray.code(), into.get(), putAway.get()));
    }

    @Override
    Optional<String> leadsTo() {
        return targets.chosen().flatMap(Targets.Target::code);
    }

    private List<Targets.Target> fitting() {
        return shelf.all().stream()
                .filter(other -> ShareTrays.againstTarget(shelf, brood, tray.code(), other.code())
                        .isEmpty())
                .map(MergeForm::target)
                .toList();
    }

    private String whyNot() {
        String typed = targets.typedProperty().get().strip();
        return shelf.all().stream()
                .filter(other -> other.code().equalsIgnoreCase(typed))
                .findFirst()
                .flatMap(other -> ShareTrays.againstTarget(shelf, brood, tray.code(), other.code()))
                .orElseGet(() -> typed.isEmpty() && !targets.fitting().isEmpty()
                        ? Texts.say("Type the tray they go into, or choose from the list.")
                        : Texts.say("There is no such tray of {0}. Choose one from the list, or split first.", brood));
    }

    private static Targets.Target target(Standing other) {
        return new Targets.Target(
                Optional.of(other.code()),
                other.code(),
                other.alive() == 0
                        ? Texts.say("empty")
                        : ShelfWords.broods(other) + ", " + ShelfWords.animals(other.alive()));
    }
}
