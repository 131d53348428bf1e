package org.moultwright.ui.instrument;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import javafx.beans.Observable;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import org.moultwright.compute.calibration.KnownPoints;
import org.moultwright.compute.calibration.SaturatedSalt;
import org.moultwright.domain.CalibrationPoint;
import org.moultwright.domain.Quantity;
import org.moultwright.language.Degrees;
import org.moultwright.language.Scale;
import org.moultwright.language.Texts;

/** One reference point as the keeper writes it. */
final class PointEntry {
    /** What the true value comes from. */
    enum Kind {
        ICE(Texts.say("Ice bath"), Quantity.TEMPERATURE),
        THERMOMETER(Texts.say("Reference thermometer"), Quantity.TEMPERATURE),
        SALT(Texts.say("Salt jar"), Quantity.HUMIDITY);

        private final String word;
        private final Quantity quantity;

        Kind(String word, Quantity quantity) {
            this.word = word;
            this.quantity = quantity;
        }

        String word() {
            return word;
        }

        Quantity quantity() {
            return quantity;
        }
    }

    private final Kind kind;
    private final ObjectProperty<SaturatedSalt> salt = new SimpleObjectProperty<>(SaturatedSalt.SODIUM_CHLORIDE);
    private final MeasuredEntry known;
    private final MeasuredEntry knownSd =
            new MeasuredEntry(Texts.say("reference, plus or minus"), 0.001, 5, Scale.APART.words(0.1), Scale.APART);
    private final MeasuredEntry indicated;
    private final MeasuredEntry indicatedSd;

    PointEntry(Kind kind) {
        this.kind = kind;
        boolean isSalt = kind == Kind.SALT;
        this.known = isSalt
                ? temperature(Texts.say("jar, {0}", Degrees.symbol()), 20, 30, Scale.TEMPERATURE.words(25))
                : temperature(Texts.say("reference, {0}", Degrees.symbol()), -40, 85, "");
        this.indicated = isSalt
                ? new MeasuredEntry(Texts.say("probe, %"), 0, 100, "")
                : temperature(Texts.say("probe, {0}", Degrees.symbol()), -40, 85, "");
        this.indicatedSd = isSalt
                ? new MeasuredEntry(Texts.say("probe, plus or minus"), 0, 5, "0.5")
                : new MeasuredEntry(Texts.say("probe, plus or minus"), 0, 5, Scale.APART.words(0.05), Scale.APART);
    }

    private static MeasuredEntry temperature(String name, double low, double high, String usual) {
        return new MeasuredEntry(name, low, high, usual, Scale.TEMPERATURE);
    }

    Kind kind() {
        return kind;
    }

    ObjectProperty<SaturatedSalt> saltProperty() {
        return salt;
    }

    /** What the reference thermometer shows, or how warm the jar is. */
    MeasuredEntry known() {
        return known;
    }

    /** Standard uncertainty of the reference thermometer. */
    MeasuredEntry knownSd() {
        return knownSd;
    }

    /** What the probe shows. */
    MeasuredEntry indicated() {
        return indicated;
    }

    /** How restless that is. */
    MeasuredEntry indicatedSd() {
        return indicatedSd;
    }

    /** The humidity over the salt, once the jar's temperature is written. */
    OptionalDouble saltPercent() {
        OptionalDouble celsius = known.value();
        return celsius.isPresent()
                ? OptionalDouble.of(salt.get().humidityPercent(celsius.getAsDouble()))
                : OptionalDouble.empty();
    }

    Observable[] observables() {
        return Stream.concat(
                        Stream.of(salt),
                        Stream.of(known, knownSd, indicated, indicatedSd).map(MeasuredEntry::textProperty))
                .toArray(Observable[]::new);
    }

    /** The point, once all of it is written. */
    Optional<CalibrationPoint> point() {
        if (indicated.value().isEmpty() || indicatedSd.value().isEmpty()) {
            return Optional.empty();
        }
        double shown = indicated.value().getAsDouble();
        double shownSd = indicatedSd.value().getAsDouble();
        if (kind == Kind.ICE) {
            return Optional.of(KnownPoints.ice(shown, shownSd));
        }
        if (known.value().isEmpty()) {
            return Optional.empty();
        }
        double truth = known.value().getAsDouble();
        if (kind == Kind.SALT) {
            return Optional.of(KnownPoints.salt(salt.get(), truth, shown, shownSd));
        }
        return knownSd.value().isEmpty()
                ? Optional.empty()
                : Optional.of(new CalibrationPoint(
                        truth, knownSd.value().getAsDouble(), shown, shownSd, Texts.say("reference thermometer")));
    }
}
