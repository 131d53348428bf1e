package org.moultwright.compute.forecast;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.moultwright.compute.climate.AgeOrigin;
import org.moultwright.domain.Brood;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.Stage;

/**
 * Says when each tray of a brood will moult and how many animals will come of it.
 *
 * <p>Immutable and safe to share. Sees only what was known at the instant of the question. Reads no clock,
 * file or unseeded random source: the same question gives the same bits. Thin or odd evidence is answered,
 * with notes, and never thrown at.
 */
public final class Forecaster {
    /** The forecast for one question. */
    public BroodForecast forecast(ForecastQuestion question) {
        BroodRecord known = question.record().until(question.asOf());
        Optional<AgeOrigin> origin =
                AgeOrigin.of(known).filter(found -> !found.at().isAfter(question.asOf()));
        return origin.map(found -> forecast(question, known, found)).orElseGet(() -> nothingKnown(question));
    }

    private static BroodForecast forecast(ForecastQuestion question, BroodRecord known, AgeOrigin origin) {
        Brood brood = known.brood();
        List<Stage> boundaries = Boundaries.of(known);
        Belief belief = Belief.of(brood, boundaries);
        BroodSight sight = BroodSight.of(known, question.asOf(), origin, boundaries, belief);
        ForecastNotes notes = new ForecastNotes(sight, belief.source());
        List<TrayForecast> trays;
        Optional<CountInterval> yield = Optional.empty();
        if (sight.usableTrays().isEmpty()) {
            trays = IntStream.range(0, sight.trays().size())
                    .mapToObj(tray -> BroodOutlook.bare(sight, tray))
                    .toList();
        } else {
            BroodOutlook outlook = new BroodOutlook(
                    question, sight, sight.prior(belief), Mortality.of(known, sight.trays(), boundaries));
            trays = outlook.trays();
            yield = Optional.of(outlook.finallyPassed());
            notes.posterior(outlook.isCoarse());
        }
        return new BroodForecast(
                brood.code(),
                question.asOf(),
                sight.meanAge(),
                sight.meanGapFraction(),
                belief.source(),
                0,
                trays,
                brood.lastStage(),
                yield,
                notes.all());
    }

    private static BroodForecast nothingKnown(ForecastQuestion question) {
        return new BroodForecast(
                question.record().brood().code(),
                question.asOf(),
                0,
                0,
                PriorSource.GENERAL,
                0,
                List.of(),
                question.record().brood().lastStage(),
                Optional.empty(),
                List.of(new ForecastNote(ForecastNote.Kind.TOO_LITTLE_TO_GO_ON, "", Double.NaN)));
    }
}
