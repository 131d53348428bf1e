package org.moultwright.ui.broods;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import org.moultwright.domain.RateForm;
import org.moultwright.domain.Stage;
import org.moultwright.domain.Timing;
import org.moultwright.language.Degrees;
import org.moultwright.language.Scale;
import org.moultwright.language.Texts;

/** What a keeper believes of a timing, as it is being written. */
final class BeliefForm {
    private static final double LONGEST_WARM_DAYS = 1000;
    private static final double COLDEST = 0;
    private static final double HOTTEST = 60;
    private static final String FILL = Texts.say("Write a number here.");

    private final Map<Stage, Figure> medians = new EnumMap<>(Stage.class);
    private final Figure batchPercent = new Figure(Texts.say("how far broods differ, in percent"), 0, 100);
    private final Figure lower = new Figure(
            Texts.say("no development below, in {0}", Degrees.symbol()), COLDEST, HOTTEST, Scale.TEMPERATURE);
    private final Figure upper =
            new Figure(Texts.say("none above, in {0}", Degrees.symbol()), COLDEST, HOTTEST, Scale.TEMPERATURE);
    private final ObjectProperty<Rate> rate = new SimpleObjectProperty<>(Rate.CURVE);
    private RateForm other = new RateForm.Linear(COLDEST);

    /** How development depends on temperature. A form that came with a folder can be kept, not written here. */
    enum Rate {
        CURVE(Texts.say("a curve with an end")),
        LINE(Texts.say("a straight line")),
        OTHER(Texts.say("as it came"));

        private final String words;

        Rate(String words) {
            this.words = words;
        }

        String words() {
            return words;
        }
    }

    BeliefForm(List<Stage> stages) {
        stages.stream()
                .skip(1)
                .forEach(stage -> medians.put(
                        stage,
                        new Figure(Texts.say("warm-days to {0}, half of them", stage.key()), 0.1, LONGEST_WARM_DAYS)));
    }

    Map<Stage, Figure> medians() {
        return medians;
    }

    Figure batchPercent() {
        return batchPercent;
    }

    Figure lower() {
        return lower;
    }

    Figure upper() {
        return upper;
    }

    ObjectProperty<Rate> rateProperty() {
        return rate;
    }

    /** The ways to choose from; a form that came with a folder is among them only where there is one. */
    List<Rate> rates() {
        return rate.get() == Rate.OTHER ? List.of(Rate.values()) : List.of(Rate.CURVE, Rate.LINE);
    }

    /** Writes a timing into the fields. */
    void show(Timing timing) {
        medians.forEach((stage, figure) ->
                Optional.ofNullable(timing.medianWarmDays().get(stage)).ifPresent(figure::set));
        batchPercent.set(100 * timing.batchSd());
        if (timing.rate() instanceof RateForm.Linear linear) {
            rate.set(Rate.LINE);
            lower.set(linear.lowerCelsius());
        } else if (timing.rate() instanceof RateForm.Briere1 briere) {
            rate.set(Rate.CURVE);
            lower.set(briere.lowerCelsius());
            upper.set(briere.upperCelsius());
        } else {
            rate.set(Rate.OTHER);
            other = timing.rate();
        }
    }

    /** The timing written, if all of it makes sense; else each field says what is wrong with it. */
    Optional<Timing> read() {
        Optional<Map<Stage, Double>> ages = ages();
        OptionalDouble percent = needed(batchPercent);
        Optional<RateForm> form = form();
        return ages.isPresent() && percent.isPresent() && form.isPresent()
                ? Optional.of(new Timing(ages.get(), percent.getAsDouble() / 100, form.get()))
                : Optional.empty();
    }

    /** The ages written; each must lie above the one before. A stage left empty keeps the usual proportion. */
    private Optional<Map<Stage, Double>> ages() {
        Map<Stage, Double> ages = new EnumMap<>(Stage.class);
        boolean isSound = true;
        double before = 0;
        for (Map.Entry<Stage, Figure> entry : medians.entrySet()) {
            Figure figure = entry.getValue();
            OptionalDouble age = figure.check();
            isSound &= age.isPresent() || figure.isEmpty();
            if (age.isPresent() && age.getAsDouble() <= before) {
                figure.problemProperty().set(Texts.say("more than the {0} of the stage before", Figure.words(before)));
                isSound = false;
            }
            before = age.orElse(before);
            age.ifPresent(value -> ages.put(entry.getKey(), value));
        }
        if (isSound && ages.isEmpty()) {
            medians.values().stream()
                    .reduce((earlier, later) -> later)
                    .ifPresent(last -> last.problemProperty().set(Texts.say("Write at least this one.")));
        }
        return isSound && !ages.isEmpty() ? Optional.of(ages) : Optional.empty();
    }

    private Optional<RateForm> form() {
        if (rate.get() == Rate.OTHER) {
            return Optional.of(other);
        }
        OptionalDouble from = needed(lower);
        if (rate.get() == Rate.LINE) {
            return from.isPresent() ? Optional.of(new RateForm.Linear(from.getAsDouble())) : Optional.empty();
        }
        OptionalDouble to = needed(upper);
        if (from.isPresent() && to.isPresent() && to.getAsDouble() <= from.getAsDouble()) {
            upper.problemProperty()
                    .set(Texts.say(
                            "more than the {0} {1} below", Degrees.shortest(from.getAsDouble(), 2), Degrees.symbol()));
            return Optional.empty();
        }
        return from.isPresent() && to.isPresent()
                ? Optional.of(new RateForm.Briere1(from.getAsDouble(), to.getAsDouble()))
                : Optional.empty();
    }

    private static OptionalDouble needed(Figure figure) {
        OptionalDouble value = figure.check();
        if (figure.isEmpty()) {
            figure.problemProperty().set(FILL);
        }
        return value;
    }
}
