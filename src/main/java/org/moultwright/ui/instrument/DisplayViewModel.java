package org.moultwright.ui.instrument;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import org.moultwright.compute.agreement.DisplayCheck;
import org.moultwright.compute.agreement.LimitsOfAgreement;
import org.moultwright.domain.Brood;
import org.moultwright.domain.DisplayNote;
import org.moultwright.domain.Reading;
import org.moultwright.language.Degrees;
import org.moultwright.language.Scale;
import org.moultwright.language.Texts;
import org.moultwright.task.Outcome;

/** Displays held against probes: one read off now, and all that were read off of one container. */
public final class DisplayViewModel {
    /** How many standard uncertainties "for sure" takes (JCGM 100:2008, 6.3.3: about 95 %). */
    private static final double COVERAGE = 2;

    private final InstrumentDesk desk;
    private final DisplayPlaces places;
    private final Runnable close;
    private final ObjectProperty<String> container;
    private final MeasuredEntry celsius = new MeasuredEntry(
            Texts.say("display, {0}", Degrees.symbol()),
            Reading.LOWEST_CELSIUS,
            Reading.HIGHEST_CELSIUS,
            "",
            Scale.TEMPERATURE);
    private final ObjectProperty<Double> stepCelsius = new SimpleObjectProperty<>(0.1);
    private final ObjectProperty<Double> toleranceCelsius = new SimpleObjectProperty<>(0.5);
    private final ObjectProperty<Double> positionSdCelsius = new SimpleObjectProperty<>(0.2);
    private final StringProperty note = new SimpleStringProperty("");
    private final ReadOnlyObjectWrapper<List<DisplayPair>> pairs = new ReadOnlyObjectWrapper<>(List.of());
    private final ReadOnlyStringWrapper told = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");

    /** @param close leaves the page */
    public DisplayViewModel(InstrumentDesk desk, DisplayPlaces places, Runnable close) {
        this.desk = desk;
        this.places = places;
        this.close = close;
        this.container = new SimpleObjectProperty<>(
                places.containers().stream().findFirst().orElse(""));
        container.addListener((observed, before, now) -> compare());
        positionSdCelsius.addListener((observed, before, now) -> compare());
        compare();
    }

    /** Containers whose display a probe can judge now. */
    List<String> containers() {
        return places.containers();
    }

    ObjectProperty<String> containerProperty() {
        return container;
    }

    MeasuredEntry celsius() {
        return celsius;
    }

    /** By how much the display's last digit counts. */
    ObjectProperty<Double> stepCelsiusProperty() {
        return stepCelsius;
    }

    /** The difference the keeper accepts. */
    ObjectProperty<Double> toleranceCelsiusProperty() {
        return toleranceCelsius;
    }

    /** Standard uncertainty of display and probe being in two places. */
    ObjectProperty<Double> positionSdCelsiusProperty() {
        return positionSdCelsius;
    }

    StringProperty noteProperty() {
        return note;
    }

    /** Every comparison of the container's display, the latest first. */
    ReadOnlyObjectProperty<List<DisplayPair>> pairsProperty() {
        return pairs.getReadOnlyProperty();
    }

    /** What cannot be compared, and why; empty when everything can. */
    ReadOnlyStringProperty toldProperty() {
        return told.getReadOnlyProperty();
    }

    /** Why it could not be kept; empty when nothing stands in the way. */
    ReadOnlyStringProperty problemProperty() {
        return problem.getReadOnlyProperty();
    }

    DisplayCheck.Judgement judge(DisplayCheck check) {
        return check.judge(toleranceCelsius.get(), COVERAGE);
    }

    /** The temperature the keeper most likely wants there. */
    double wantedCelsius() {
        return Brood.DEFAULT_REFERENCE_CELSIUS;
    }

    Optional<LimitsOfAgreement> limits() {
        return pairs.get().size() < DisplayWords.ENOUGH_PAIRS
                ? Optional.empty()
                : Optional.of(LimitsOfAgreement.of(
                        pairs.get().stream()
                                .mapToDouble(pair -> pair.check().difference())
                                .toArray(),
                        LimitsOfAgreement.SPREAD_95));
    }

    /** Since when the display has crept away from how it began; empty where it has not, or it is too soon to say. */
    Optional<DisplayCreep> creep() {
        return DisplayCreep.in(pairs.get());
    }

    String when(DisplayNote read) {
        return desk.days().shortDay(read.at()) + " " + desk.days().clock(read.at());
    }

    String day(DisplayNote read) {
        return desk.days().shortDay(read.at());
    }

    void cancel() {
        close.run();
    }

    /** Keeps what the display shows now. */
    void keep() {
        celsius.left();
        if (celsius.value().isEmpty()) {
            problem.set(Texts.say("Write what the display shows."));
            return;
        }
        double shown = celsius.value().getAsDouble();
        String words = note.get().strip();
        desk.runner()
                .<DisplayNote>run(
                        progress -> desk.displays().save(container.get(), shown, stepCelsius.get(), words),
                        this::keptOrNot);
    }

    private void keptOrNot(Outcome<DisplayNote> outcome) {
        if (outcome instanceof Outcome.Failed<DisplayNote> failed) {
            problem.set(Texts.say(
                    "Not kept: {0} What you wrote is kept on screen.",
                    failed.fault().getMessage()));
            return;
        }
        problem.set("");
        celsius.textProperty().set("");
        note.set("");
        desk.saved();
        compare();
    }

    private void compare() {
        String asked = container.get();
        double positionSd = positionSdCelsius.get();
        desk.runner().run(progress -> compared(asked, positionSd), outcome -> {
            if (!asked.equals(container.get())) {
                return;
            }
            if (outcome instanceof Outcome.Done<Compared> done) {
                pairs.set(done.value().pairs());
                told.set(done.value().told());
            } else if (outcome instanceof Outcome.Failed<Compared> failed) {
                told.set(Texts.say(
                        "What was read off could not be read: {0}",
                        failed.fault().getMessage()));
            }
        });
    }

    private Compared compared(String asked, double positionSd) {
        List<DisplayPair> found = new ArrayList<>();
        int alone = 0;
        for (DisplayNote read : desk.book().displays()) {
            if (read.container().equals(asked)) {
                Optional<DisplayCheck> check = desk.displays().check(read, places.of(asked, read.at()), positionSd);
                check.ifPresent(paired -> found.add(new DisplayPair(read, paired)));
                alone += check.isPresent() ? 0 : 1;
            }
        }
        found.sort(Comparator.comparing((DisplayPair pair) -> pair.note().at()).reversed());
        return new Compared(
                found,
                alone == 0
                        ? ""
                        : Texts.say(
                                "{0} read off while no probe measured there within five minutes: nothing to hold them against.",
                                alone));
    }

    private record Compared(List<DisplayPair> pairs, String told) {}
}
