package org.moultwright.compute.forecast;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.moultwright.compute.learning.KindLearner;
import org.moultwright.compute.stage.Chance;
import org.moultwright.compute.stage.PosteriorDraws;
import org.moultwright.compute.stage.StagePrior;
import org.moultwright.domain.AssumedTimings;
import org.moultwright.domain.Brood;
import org.moultwright.domain.Stage;

/**
 * Says when each tray of a brood will moult and how many animals will come of it.
 *
 * <p>Immutable and safe to share. Sees only what was known at the instant of the question. Reads no clock,
 * file or unseeded random source: the same question gives the same bits. Thin or odd evidence is answered,
 * with notes, and never thrown at.
 */
public final class Forecaster {
    private static final int DRAWS = 1000;

    private final AssumedTimings assumed;

    /** @param assumed of the timing of broods of which their keeper believes nothing */
    public Forecaster(AssumedTimings assumed) {
        this.assumed = assumed;
    }

    /** The forecast for one question, the place of the animals staying as it is. */
    public BroodForecast forecast(ForecastQuestion question) {
        return prepare(question)
                .map(prepared -> prepared.under(ClimatePlan.AS_IT_IS))
                .orElseGet(() -> nothingKnown(question));
    }

    /** All of it that does not depend on the temperatures to come; empty where nothing about the brood has a date. */
    public Optional<PreparedForecast> prepare(ForecastQuestion question) {
        Brood brood = question.record().brood();
        List<Stage> boundaries = Boundaries.of(question.record().until(question.asOf()));
        Belief belief = Belief.of(brood, boundaries, assumed);
        Lessons lessons = question.past().lessons(belief, boundaries, brood.referenceTemperatureCelsius());
        return prepare(question, belief, boundaries, lessons);
    }

    static Optional<PreparedForecast> prepare(
            ForecastQuestion question, Belief belief, List<Stage> boundaries, Lessons lessons) {
        return BroodSight.of(question.record(), question.asOf(), boundaries, belief)
                .map(sight -> prepare(question, sight, belief, lessons));
    }

    private static PreparedForecast prepare(
            ForecastQuestion question, BroodSight sight, Belief belief, Lessons lessons) {
        List<Stage> boundaries = sight.boundaries();
        PriorSource source = lessons.isEmpty() ? belief.source() : PriorSource.LEARNED;
        ForecastNotes notes = new ForecastNotes(sight, source, lessons.widthFactor());
        StagePrior prior = KindLearner.next(
                belief.kind(sight.scaleSd(), sight.startingAge().halfWidthWarmDays()),
                belief.lengthShares(),
                lessons.fits());
        List<ExpectedAge> expectedAges = IntStream.range(0, boundaries.size())
                .mapToObj(boundary -> ExpectedAge.of(boundaries.get(boundary), prior, boundary))
                .toList();
        Optional<Outlook> outlook = Optional.empty();
        if (!sight.usableTrays().isEmpty()) {
            Outlook found = outlook(question, sight, belief, prior, lessons);
            notes.posterior(found.posterior().isCoarse());
            notes.contradictions(sight, found.posterior(), new Chance(question.seed() + 2));
            outlook = Optional.of(found);
        }
        return new PreparedForecast(question, sight, source, lessons, outlook, expectedAges, notes.all());
    }

    private static Outlook outlook(
            ForecastQuestion question, BroodSight sight, Belief belief, StagePrior prior, Lessons lessons) {
        PosteriorDraws posterior = PosteriorDraws.of(sight.usableHistories(), prior, DRAWS, question.seed());
        LifeTable own = LifeTable.of(sight.trays(), belief.medianWarmDays()[0]);
        Mortality mortality = new Mortality(sight.boundaries(), lessons.lives(), own);
        BurstRisk risk = new BurstRisk(LifeTable.together(lessons.lives()), own);
        Chance chance = new Chance(question.seed() + 1);
        List<double[]> hazards =
                Stream.generate(() -> mortality.draw(chance)).limit(DRAWS).toList();
        List<Bursts> bursts = sight.usableTrays().stream()
                .map(tray -> risk.next(sight.ageOf(tray), DRAWS, chance))
                .toList();
        return new Outlook(posterior, hazards, mortality, bursts, BelievedSpread.likeBefore(belief.lengthShares()));
    }

    /** Of a brood without any date by then, or with a laying after it. */
    private BroodForecast nothingKnown(ForecastQuestion question) {
        Brood brood = question.record().brood();
        ForecastNote.Kind why =
                brood.laid().isPresent() ? ForecastNote.Kind.LAID_LATER : ForecastNote.Kind.TOO_LITTLE_TO_GO_ON;
        return new BroodForecast(
                brood.code(),
                question.asOf(),
                0,
                0,
                Belief.of(brood, Boundaries.of(question.record()), assumed).source(),
                0,
                List.of(),
                brood.lastStage(),
                Optional.empty(),
                List.of(new ForecastNote(why, "", Double.NaN)));
    }
}
