package org.moultwright.ui.broods;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import org.moultwright.compute.count.CountByWeight;
import org.moultwright.compute.count.CountEstimate;
import org.moultwright.compute.count.Scoop;
import org.moultwright.domain.Stage;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.Typed;

/** The good ones of a sac weighed instead of counted: some counted samples, and the weight of all. */
final class WeighedSamples {
    private static final int SAMPLES = 4;
    private static final double CONFIDENCE = 0.95;
    private static final String ON = "on";

    private final SacForm form;
    private final FormField weighs;
    private final FormField stageKey;
    private final FormField whole;
    private final List<Sample> samples = new ArrayList<>();
    private final BooleanProperty on = new SimpleBooleanProperty();
    private final ObjectProperty<Stage> stage = new SimpleObjectProperty<>(Stage.POSTEMBRYO);

    WeighedSamples(SacForm form) {
        this.form = form;
        this.weighs = form.field("weighed", "");
        this.stageKey = form.field("weighed-stage", "");
        for (int i = 1; i <= SAMPLES; i++) {
            samples.add(new Sample(
                    form.field("sample-" + i, Texts.say("sample {0}, animals counted", i)),
                    form.field("sample-" + i + "-grams", Texts.say("sample {0}, grams", i))));
        }
        this.whole = form.field("whole-grams", Texts.say("all good ones together, samples included, grams"));
        on.addListener((observed, before, now) -> weighs.set(now ? ON : ""));
        weighs.textProperty().addListener((observed, before, now) -> on.set(now.equals(ON)));
        stage.addListener((observed, before, now) -> stageKey.set(now.key()));
        stageKey.textProperty()
                .addListener((observed, before, now) -> Stage.fromKey(now).ifPresent(stage::set));
    }

    /** Whether the good ones are weighed and not counted. */
    BooleanProperty onProperty() {
        return on;
    }

    /** What most of them are. */
    ObjectProperty<Stage> stageProperty() {
        return stage;
    }

    List<Sample> samples() {
        return samples;
    }

    FormField whole() {
        return whole;
    }

    /** What was weighed comes to; empty while it comes to nothing yet. */
    Optional<Weighed> weighed() {
        List<Scoop> scoops =
                samples.stream().flatMap(sample -> sample.scoop().stream()).toList();
        OptionalDouble grams = Typed.number(whole.written());
        double sampled = scoops.stream().mapToDouble(Scoop::weight).sum();
        if (scoops.isEmpty() || grams.isEmpty() || grams.getAsDouble() < sampled) {
            return Optional.empty();
        }
        int counted = scoops.stream().mapToInt(Scoop::count).sum();
        return counted == 0
                ? Optional.empty()
                : Optional.of(new Weighed(CountByWeight.total(scoops, grams.getAsDouble()), counted));
    }

    /** Whether enough is written; what is not is said at its field. */
    boolean isComplete() {
        boolean isComplete = true;
        for (Sample sample : samples) {
            if (!sample.count().isEmpty() && sample.grams().isEmpty()) {
                isComplete = form.refuse(sample.grams(), Texts.say("Weigh it too."));
            } else if (sample.count().isEmpty() && !sample.grams().isEmpty()) {
                isComplete = form.refuse(sample.count(), Texts.say("Count it too."));
            } else if (!sample.count().isEmpty() && sample.scoop().isEmpty()) {
                isComplete = form.refuse(sample.grams(), Texts.say("More than 0 grams."));
            }
        }
        if (isComplete && samples.stream().allMatch(sample -> sample.count().isEmpty())) {
            isComplete = form.refuse(samples.get(0).count(), Texts.say("Count one sample at least."));
        }
        if (isComplete && weighed().isEmpty()) {
            isComplete = form.refuse(
                    whole,
                    whole.isEmpty()
                            ? Texts.say("Weigh all of them together, the samples too.")
                            : Texts.say("Less than the samples alone. Weigh all of them together, the samples too."));
        }
        return isComplete;
    }

    /** One counted and weighed sample. */
    record Sample(FormField count, FormField grams) {
        Optional<Scoop> scoop() {
            OptionalDouble weight = Typed.number(grams.written());
            return count.isEmpty() || weight.isEmpty() || !(weight.getAsDouble() > 0)
                    ? Optional.empty()
                    : Optional.of(new Scoop(count.count(), weight.getAsDouble()));
        }
    }

    /** An estimate in whole animals; those counted in the samples are there in any case. */
    record Weighed(CountEstimate estimate, int counted) {
        int animals() {
            return Math.max(counted, (int) Math.round(estimate.total()));
        }

        boolean hasInterval() {
            return estimate.degreesOfFreedom() > 0;
        }

        /** "209 to 257"; empty for one sample. */
        String interval() {
            return hasInterval()
                    ? Texts.say(
                            "{0} to {1}",
                            Math.max(counted, (int) Math.floor(estimate.lower(CONFIDENCE))),
                            Math.max(counted, (int) Math.ceil(estimate.upper(CONFIDENCE))))
                    : "";
        }

        /** As it stands in the ledger beside the animals. */
        String note() {
            return hasInterval() ? Texts.say("about {0}, 95 %", interval()) : Texts.say("one sample, no interval");
        }
    }
}
