package org.moultwright.ui.intake;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import java.util.OptionalDouble;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import org.jspecify.annotations.Nullable;
import org.moultwright.domain.Quality;
import org.moultwright.domain.Reading;
import org.moultwright.language.Degrees;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.Typed;

/** A reading taken off any thermometer and typed. */
final class ReadingViewModel {
    /** Beyond these a keeper is asked once whether it is so (our own rule). */
    private static final double HARDLY_COLDER_CELSIUS = 10;

    private static final double HARDLY_WARMER_CELSIUS = 40;

    private final IntakeDesk desk;
    private final EntryModel entry;
    private final StringProperty celsius = new SimpleStringProperty("");
    private final StringProperty humidity = new SimpleStringProperty("");
    private final StringProperty time = new SimpleStringProperty("");
    private final ObjectProperty<@Nullable LocalDate> day = new SimpleObjectProperty<>();
    private final BooleanProperty doubtful = new SimpleBooleanProperty(false);
    private OptionalDouble askedAbout = OptionalDouble.empty();

    ReadingViewModel(IntakeDesk desk) {
        this.desk = desk;
        this.entry = new EntryModel(desk);
        day.set(desk.days().date(desk.clock().instant()));
    }

    EntryModel entry() {
        return entry;
    }

    StringProperty celsiusProperty() {
        return celsius;
    }

    StringProperty humidityProperty() {
        return humidity;
    }

    /** The time of day; empty for now. */
    StringProperty timeProperty() {
        return time;
    }

    ObjectProperty<@Nullable LocalDate> dayProperty() {
        return day;
    }

    /** Whether something speaks against it: it is kept, and counts for nothing. */
    BooleanProperty doubtfulProperty() {
        return doubtful;
    }

    void keep() {
        OptionalDouble temperature = Typed.temperature(celsius.get());
        OptionalDouble percent = Typed.number(humidity.get());
        Optional<Instant> at = instant();
        if (entry.containerProperty().get().isEmpty()) {
            entry.refuse(Texts.say("There is no container yet. Write down where a tray stands first."));
        } else if (temperature.isEmpty()) {
            entry.refuse(Texts.say(
                    "Type the temperature as a number in {0}, such as {1}.",
                    Degrees.symbol(), Degrees.number(26.4, 1)));
        } else if (isOutside(temperature.getAsDouble(), Reading.LOWEST_CELSIUS, Reading.HIGHEST_CELSIUS)) {
            entry.refuse(Texts.say("No air here is that cold or warm. Look at the figure again."));
        } else if (!humidity.get().isBlank() && (percent.isEmpty() || isOutside(percent.getAsDouble(), 0, 100))) {
            entry.refuse(Texts.say("Type the humidity as a number from 0 to 100, or leave it empty."));
        } else if (at.isEmpty()) {
            entry.refuse(Texts.say(
                    "Type the time as 20:41, or leave it empty for now. An hour the clocks leap over never was."));
        } else if (at.get().isAfter(desk.clock().instant())) {
            entry.refuse(Texts.say("That time is yet to come. Choose the day it was read."));
        } else if (isToBeAsked(temperature.getAsDouble())) {
            askedAbout = temperature;
            entry.refuse(Texts.say(
                    "Is it really {0} in there? Keep it once more if so, or mark it as doubtful.",
                    Degrees.words(temperature.getAsDouble(), 1)));
        } else {
            keep(new Reading(
                    at.get(),
                    temperature.getAsDouble(),
                    percent.orElse(Double.NaN),
                    doubtful.get() ? Quality.SUSPECT : Quality.GOOD));
        }
    }

    private void keep(Reading reading) {
        String container = entry.containerProperty().get();
        Object[] places = {
            container,
            desk.days().day(reading.takenAt()),
            desk.days().clock(reading.takenAt()),
            Degrees.words(reading.temperatureCelsius(), 1)
        };
        String words = reading.quality() == Quality.GOOD
                ? Texts.say("{0}, {1} at {2}: {3} is kept.", places)
                : Texts.say("{0}, {1} at {2}: {3} is kept as doubtful; it counts for nothing.", places);
        entry.keep(() -> desk.write().keep(container, reading), () -> words, this::clear);
    }

    private void clear() {
        celsius.set("");
        humidity.set("");
        doubtful.set(false);
        askedAbout = OptionalDouble.empty();
    }

    private boolean isToBeAsked(double temperature) {
        boolean isAsked = askedAbout.isPresent() && askedAbout.getAsDouble() == temperature;
        return !isAsked && !doubtful.get() && isOutside(temperature, HARDLY_COLDER_CELSIUS, HARDLY_WARMER_CELSIUS);
    }

    private Optional<Instant> instant() {
        Instant now = desk.clock().instant();
        LocalDate chosen = day.get();
        if (time.get().isBlank()) {
            boolean isToday = chosen == null || chosen.equals(desk.days().date(now));
            return isToday ? Optional.of(now.truncatedTo(ChronoUnit.SECONDS)) : Optional.empty();
        }
        Optional<LocalTime> clock = Typed.clock(time.get());
        return chosen == null
                ? Optional.empty()
                : clock.flatMap(
                        shown -> Typed.instant(chosen, shown, desk.days().zone(), now));
    }

    private static boolean isOutside(double value, double lowest, double highest) {
        return value < lowest || value > highest;
    }
}
