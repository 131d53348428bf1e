package org.moultwright.ui.intake;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.jspecify.annotations.Nullable;
import org.moultwright.domain.Extremes;
import org.moultwright.domain.Reading;
import org.moultwright.language.Degrees;
import org.moultwright.language.Numbers;
import org.moultwright.language.Texts;
import org.moultwright.task.Outcome;
import org.moultwright.ui.control.Typed;

/** A day's lowest and highest, as a thermometer that remembers them shows. */
final class ExtremesViewModel {
    private static final int SHOWN = 8;

    private final IntakeDesk desk;
    private final EntryModel entry;
    private final ObjectProperty<@Nullable LocalDate> day = new SimpleObjectProperty<>();
    private final StringProperty lowest = new SimpleStringProperty("");
    private final StringProperty highest = new SimpleStringProperty("");
    private final StringProperty driest = new SimpleStringProperty("");
    private final StringProperty dampest = new SimpleStringProperty("");
    private final BooleanProperty sinceLast = new SimpleBooleanProperty(false);
    private final ReadOnlyObjectWrapper<Optional<Instant>> last = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ObservableList<String> lately = FXCollections.observableArrayList();

    ExtremesViewModel(IntakeDesk desk) {
        this.desk = desk;
        this.entry = new EntryModel(desk);
        day.set(desk.days().date(desk.clock().instant()));
        entry.containerProperty().addListener((observed, before, now) -> recall());
        entry.undoableProperty().addListener((observed, before, now) -> recall());
        recall();
    }

    EntryModel entry() {
        return entry;
    }

    ObjectProperty<@Nullable LocalDate> dayProperty() {
        return day;
    }

    StringProperty lowestProperty() {
        return lowest;
    }

    StringProperty highestProperty() {
        return highest;
    }

    StringProperty driestProperty() {
        return driest;
    }

    StringProperty dampestProperty() {
        return dampest;
    }

    /** Whether it tells of all the time since the thermometer was read last, not of a day. */
    BooleanProperty sinceLastProperty() {
        return sinceLast;
    }

    /** When the thermometer was read last; empty if that was never, or too long ago. */
    ReadOnlyObjectProperty<Optional<Instant>> lastProperty() {
        return last.getReadOnlyProperty();
    }

    /** What was written of the container lately, the newest first. */
    ObservableList<String> lately() {
        return lately;
    }

    /** "3 May at 20:15". */
    String lastWords() {
        return last.get()
                .map(at ->
                        Texts.say("{0} at {1}", desk.days().day(at), desk.days().clock(at)))
                .orElse("");
    }

    void keep() {
        OptionalDouble low = Typed.temperature(lowest.get());
        OptionalDouble high = Typed.temperature(highest.get());
        boolean isDry = driest.get().isBlank() && dampest.get().isBlank();
        OptionalDouble dry = isDry ? OptionalDouble.of(Double.NaN) : Typed.number(driest.get());
        OptionalDouble damp = isDry ? OptionalDouble.of(Double.NaN) : Typed.number(dampest.get());
        if (entry.containerProperty().get().isEmpty()) {
            entry.refuse(Texts.say("There is no container yet. Write down where a tray stands first."));
        } else if (low.isEmpty() || high.isEmpty()) {
            entry.refuse(Texts.say(
                    "Type the lowest and the highest as numbers in {0}, such as {1} and {2}.",
                    Degrees.symbol(), Degrees.shortest(24.5, 1), Degrees.shortest(27, 1)));
        } else if (low.getAsDouble() > high.getAsDouble()) {
            entry.refuse(Texts.say("The lowest is above the highest. Did they change places?"));
        } else if (dry.isEmpty() || damp.isEmpty()) {
            entry.refuse(Texts.say("Type both humidities as numbers from 0 to 100, or leave both empty."));
        } else {
            keep(low.getAsDouble(), high.getAsDouble(), dry.getAsDouble(), damp.getAsDouble());
        }
    }

    private void keep(double low, double high, double dry, double damp) {
        Instant now = desk.clock().instant();
        Optional<Instant> from = from(now);
        if (from.isEmpty()) {
            entry.refuse(Texts.say("That day is yet to come. Choose the day it was."));
            return;
        }
        Instant to = to(now);
        if (Duration.between(from.get(), to).compareTo(Duration.ofMinutes(1)) < 0) {
            entry.refuse(Texts.say("This span has only begun. Choose an earlier day, or write it down later."));
            return;
        }
        try {
            keep(new Extremes(entry.containerProperty().get(), from.get(), to, low, high, dry, damp), to.equals(now));
        } catch (IllegalArgumentException outside) {
            entry.refuse(Texts.say(
                    "No air here is like that. Temperatures lie within {0} and {1} {2}, humidities within 0 "
                            + "and 100 %, the lower one first.",
                    Degrees.number(Reading.LOWEST_CELSIUS, 0),
                    Degrees.number(Reading.HIGHEST_CELSIUS, 0),
                    Degrees.symbol()));
        }
    }

    private Optional<Instant> from(Instant now) {
        LocalDate chosen = day.get();
        if (sinceLast.get()) {
            return last.get();
        }
        return chosen == null || chosen.isAfter(desk.days().date(now))
                ? Optional.empty()
                : Optional.of(chosen.atStartOfDay(desk.days().zone()).toInstant());
    }

    /** The end of the day, or now where that is yet to come. */
    private Instant to(Instant now) {
        LocalDate chosen = day.get();
        if (sinceLast.get() || chosen == null) {
            return now;
        }
        Instant midnight = chosen.plusDays(1).atStartOfDay(desk.days().zone()).toInstant();
        return midnight.isAfter(now) ? now : midnight;
    }

    private void keep(Extremes extremes, boolean isUntilNow) {
        String span = sinceLast.get()
                ? Texts.say("since {0}", lastWords())
                : desk.days().day(extremes.from());
        String when = isUntilNow ? Texts.say("{0} until now", span) : span;
        entry.keep(() -> desk.write().keep(extremes), () -> told(extremes, when), this::clear);
    }

    private String told(Extremes extremes, String when) {
        String place = extremes.container();
        return desk.write()
                .replacedBy(extremes)
                .map(before -> Texts.say(
                        "{0}, {1}: {2} is kept in place of {3}.", place, when, words(extremes), words(before)))
                .orElseGet(() -> Texts.say("{0}, {1}: {2} is kept.", place, when, words(extremes)));
    }

    /** Reads aside what was written of the container before. */
    private void recall() {
        String container = entry.containerProperty().get();
        desk.keeper().<List<Extremes>>run(progress -> desk.write().written(container), outcome -> {
            if (outcome instanceof Outcome.Done<List<Extremes>> done) {
                recalled(done.value());
            }
        });
    }

    private void recalled(List<Extremes> written) {
        Instant longAgo = desk.clock().instant().minus(Duration.ofDays(Extremes.LONGEST_DAYS));
        last.set(written.stream().map(Extremes::to).filter(longAgo::isBefore).findFirst());
        sinceLast.set(sinceLast.get() && last.get().isPresent());
        lately.setAll(written.stream().limit(SHOWN).map(this::line).toList());
    }

    /** "2 May, 00:00 to 3 May, 00:00: 24.0 to 27.5 °C, 60 to 80 %". */
    private String line(Extremes extremes) {
        String line = Texts.say("{0} to {1}: {2}", at(extremes.from()), at(extremes.to()), words(extremes));
        return Double.isNaN(extremes.lowestPercent())
                ? line
                : Texts.say(
                        "{0}, {1} to {2} %",
                        line, Numbers.fixed(extremes.lowestPercent(), 0), Numbers.fixed(extremes.highestPercent(), 0));
    }

    private String at(Instant instant) {
        return desk.days().day(instant) + ", " + desk.days().clock(instant);
    }

    private static String words(Extremes extremes) {
        return Texts.say(
                "{0} to {1}", Degrees.number(extremes.lowestCelsius(), 1), Degrees.words(extremes.highestCelsius(), 1));
    }

    private void clear() {
        lowest.set("");
        highest.set("");
        driest.set("");
        dampest.set("");
        recall();
    }
}
