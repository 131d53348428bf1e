package org.moultwright.ui.shelf;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import org.jspecify.annotations.Nullable;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.Typed;
import org.moultwright.workflow.Deed;
import org.moultwright.workflow.ShelfAt;
import org.moultwright.workflow.ShelfRules;
import org.moultwright.workflow.Standing;

/** A container to be moved: where to, and since when. */
final class MoveForm extends ShelfForm {
    static final String NOTHING = Texts.say("nothing");

    private final ShelfDesk desk;
    private Standing moved;
    private ShelfAt shelf;
    private final Targets targets;
    private final ObjectProperty<@Nullable LocalDate> day = new SimpleObjectProperty<>();
    private final StringProperty time = new SimpleStringProperty("");

    MoveForm(ShelfDesk desk, ShelfAt shelf, Standing moved) {
        super(Texts.say("Move {0}", moved.code()), Texts.say("Move"));
        this.desk = desk;
        this.moved = moved;
        this.shelf = shelf;
        this.targets = new Targets(places(shelf, moved));
        day.set(desk.days().date(desk.clock().instant()));
    }

    /** A move kept a moment ago may only now be seen: the container stands elsewhere, and may go back. */
    @Override
    void see(ShelfAt read) {
        read.find(moved.code()).ifPresent(standing -> {
            shelf = read;
            moved = standing;
            targets.offer(places(shelf, moved));
        });
    }

    Targets targets() {
        return targets;
    }

    ObjectProperty<@Nullable LocalDate> dayProperty() {
        return day;
    }

    /** The time of day; empty for now. */
    StringProperty timeProperty() {
        return time;
    }

    /** Where a container may go, by the rules; where it stands is left out. */
    private static List<Targets.Target> places(ShelfAt shelf, Standing moved) {
        List<Targets.Target> places = new ArrayList<>();
        shelf.all().stream()
                .filter(place -> !moved.inside().equals(Optional.of(place.code())))
                .filter(place -> ShelfRules.againstPlace(shelf, moved.code(), moved.kind(), Optional.of(place.code()))
                        .isEmpty())
                .forEach(place -> places.add(target(place)));
        if (moved.inside().isPresent() || moved.since().isEmpty()) {
            places.add(new Targets.Target(Optional.empty(), NOTHING, Texts.say("stands by itself")));
        }
        return places;
    }

    private static Targets.Target target(Standing place) {
        String kind = place.kind().word();
        String where =
                place.inside().map(code -> Texts.say("{0} in {1}", kind, code)).orElse(kind);
        String air =
                place.air().map(known -> ", " + ShelfWords.temperature(known)).orElse("");
        return new Targets.Target(Optional.of(place.code()), place.code(), where + air);
    }

    @Override
    Optional<Supplier<Deed.Summary>> filledIn() {
        Optional<Targets.Target> target = targets.chosen();
        if (target.isEmpty()) {
            return refuse(targets.typedProperty(), whyNot());
        }
        Optional<Instant> at = instant();
        if (at.isEmpty()) {
            return refuse(
                    time,
                    time.get().isBlank()
                            ? Texts.say("Type the time it was moved on that day, such as 20:41.")
                            : Texts.say("Type the time as 20:41, or leave it empty for now."));
        }
        if (at.get().isAfter(desk.clock().instant())) {
            return refuse(time, Texts.say("That time is yet to come. Move it then."));
        }
        return accept(() -> desk.arrange().move(moved.code(), target.get().code(), at.get()));
    }

    /** What was typed fits no place: a rule may say why. */
    private String whyNot() {
        String typed = targets.typedProperty().get().strip();
        if (typed.isEmpty()) {
            return Texts.say("Type where it goes, or choose from the list.");
        }
        return shelf.all().stream()
                .filter(place -> place.code().equalsIgnoreCase(typed))
                .findFirst()
                .map(place -> moved.inside().equals(Optional.of(place.code()))
                        ? Texts.say("{0} stands in {1} already. Choose another place.", moved.code(), place.code())
                        : ShelfRules.againstPlace(shelf, moved.code(), moved.kind(), Optional.of(place.code()))
                                .orElse(Texts.say("Choose a place from the list.")))
                .orElse(Texts.say("No place is called '{0}'. Choose one from the list, or add it first.", typed));
    }

    private Optional<Instant> instant() {
        Instant now = desk.clock().instant();
        LocalDate today = desk.days().date(now);
        LocalDate chosen = day.get() == null ? today : day.get();
        if (time.get().isBlank()) {
            return chosen.equals(today) ? Optional.of(now) : Optional.empty();
        }
        return Typed.clock(time.get())
                .flatMap(shown -> Typed.instant(chosen, shown, desk.days().zone(), now));
    }
}
