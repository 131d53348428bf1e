package org.moultwright.ui.forecast;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.jspecify.annotations.Nullable;
import org.moultwright.compute.forecast.BroodForecast;
import org.moultwright.compute.forecast.HandsEvent;
import org.moultwright.compute.forecast.JointChance;
import org.moultwright.compute.forecast.MoultForecast;
import org.moultwright.language.Texts;
import org.moultwright.text.DayWords;
import org.moultwright.text.Vocabulary;
import org.moultwright.ui.chart.Lane;

/** The days the keeper means to be away, and what may happen on them. */
final class AwayViewModel {
    /** A tray less likely to need hands is not asked about. */
    private static final double WORTH_ASKING = 0.1;

    private static final String NOT_PLANNED =
            Texts.say("Write the days you will be away above; what may happen on them stands here.");
    private static final String TOO_EARLY = Texts.say("Too early to say what falls on those days.");
    private static final String BACKWARDS = Texts.say("The last day away is before the first. Change one of them.");

    private final DayWords days;
    private final ObjectProperty<@Nullable LocalDate> from = new SimpleObjectProperty<>();
    private final ObjectProperty<@Nullable LocalDate> to = new SimpleObjectProperty<>();
    private final ReadOnlyObjectWrapper<Optional<Lane.Absence>> absence = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyStringWrapper title = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper sentence = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper anything = new ReadOnlyStringWrapper("");
    private final ObservableList<AwayLine> lines = FXCollections.observableArrayList();

    AwayViewModel(DayWords days) {
        this.days = days;
        from.addListener((observed, before, now) -> absence.set(planned()));
        to.addListener((observed, before, now) -> absence.set(planned()));
    }

    /** The first day away; null while none is planned. */
    ObjectProperty<@Nullable LocalDate> fromProperty() {
        return from;
    }

    /** The last day away. */
    ObjectProperty<@Nullable LocalDate> toProperty() {
        return to;
    }

    ReadOnlyObjectProperty<Optional<Lane.Absence>> absenceProperty() {
        return absence.getReadOnlyProperty();
    }

    ReadOnlyStringProperty titleProperty() {
        return title.getReadOnlyProperty();
    }

    ReadOnlyStringProperty sentenceProperty() {
        return sentence.getReadOnlyProperty();
    }

    /** How likely anything at all is to be seen on those days, in a sentence; empty while none are planned. */
    ReadOnlyStringProperty anythingProperty() {
        return anything.getReadOnlyProperty();
    }

    /** One for each tray, the likeliest to need hands leading. */
    ObservableList<AwayLine> lines() {
        return lines;
    }

    /** @param broods the forecasts the trays are of, for what is common to them */
    void read(List<Foreseen> trays, List<BroodForecast> broods, Vocabulary vocabulary) {
        Optional<Lane.Absence> away = absence.get();
        title.set(away.map(Lane.Absence::words)
                .map(words -> "A" + words.substring(1))
                .orElse(Texts.say("Away")));
        lines.setAll(away.stream()
                .flatMap(planned -> trays.stream().map(tray -> AwayChances.of(tray, planned)))
                .map(chances -> AwayLine.of(chances, vocabulary))
                .sorted(Comparator.comparingDouble(AwayLine::needsHands).reversed())
                .toList());
        sentence.set(away.map(planned -> joint(broods, Set.of(HandsEvent.SEPARATION), planned)
                        .map(AwayLine::any)
                        .orElse(TOO_EARLY))
                .orElse(isBackwards() ? BACKWARDS : NOT_PLANNED));
        anything.set(away.flatMap(planned -> joint(broods, HandsEvent.ALL, planned))
                .map(AwayLine::anything)
                .orElse(""));
    }

    /** What to arrange before leaving, in sentences. */
    List<String> toArrange(List<Foreseen> trays) {
        return absence.get().stream()
                .flatMap(away -> trays.stream()
                        .filter(tray -> AwayChances.of(tray, away).needsHands() >= WORTH_ASKING)
                        .flatMap(tray ->
                                tray.moult(tray.lastStage()).stream().map(moult -> handsNeeded(tray, moult, away))))
                .toList();
    }

    private String handsNeeded(Foreseen tray, MoultForecast moult, Lane.Absence away) {
        Instant due = moult.first().p10().plus(HandsEvent.TOGETHER);
        return Texts.say(
                "{0} may need hands from {1}, while you are away. Ask a sitter, or pot early.",
                tray.code(), days.day(due.isBefore(away.from()) ? away.from() : due));
    }

    private static Optional<JointChance> joint(List<BroodForecast> broods, Set<HandsEvent> events, Lane.Absence away) {
        return JointChance.ofAny(broods, events, away.from(), away.to());
    }

    private boolean isBackwards() {
        LocalDate first = from.get();
        LocalDate last = to.get();
        return first != null && last != null && last.isBefore(first);
    }

    private Optional<Lane.Absence> planned() {
        LocalDate first = from.get();
        LocalDate last = to.get();
        if (first == null || last == null || isBackwards()) {
            return Optional.empty();
        }
        Instant leaving = first.atStartOfDay(days.zone()).toInstant();
        Instant returning = last.plusDays(1).atStartOfDay(days.zone()).toInstant();
        String words = Texts.say("away {0}", days.days(leaving, returning.minusSeconds(1)));
        return Optional.of(new Lane.Absence(leaving, returning, words));
    }
}
