package org.moultwright.workflow;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.moultwright.compute.forecast.BroodForecast;
import org.moultwright.compute.forecast.ForecastQuestion;
import org.moultwright.compute.forecast.InstantInterval;
import org.moultwright.compute.forecast.Milestone;
import org.moultwright.compute.forecast.MoultForecast;
import org.moultwright.compute.forecast.PastBroods;
import org.moultwright.compute.forecast.TrayForecast;
import org.moultwright.compute.scoring.Outcome;
import org.moultwright.domain.Account;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.Check;
import org.moultwright.domain.Stage;

/**
 * Holds the forecasts made of completed broods against what happened: the instant at which a milestone was
 * passed, as the looks on either side bracket it once the whole brood is known.
 */
public final class ScoreForecasts {
    private static final long SEED = 20_260_101;

    /** The truth about a sac's animals is known no worse than this from the looks at its trays (assumption). */
    private static final Duration WIDEST_BRACKET = Duration.ofDays(3);

    private final BroodBook book;
    private final ReadingLog readings;
    private final ForecastArchive archive;
    private final Function<ForecastQuestion, BroodForecast> forecaster;

    public ScoreForecasts(
            BroodBook book,
            ReadingLog readings,
            ForecastArchive archive,
            Function<ForecastQuestion, BroodForecast> forecaster) {
        this.book = book;
        this.readings = readings;
        this.archive = archive;
        this.forecaster = forecaster;
    }

    /** What became of every event forecast before it happened, by milestone; milestones without any are left out. */
    public Map<Milestone, List<Outcome>> outcomes() {
        Map<Milestone, List<Outcome>> outcomes = new EnumMap<>(Milestone.class);
        byEvent()
                .forEach(scored -> outcomes.computeIfAbsent(scored.milestone(), unseen -> new ArrayList<>())
                        .addAll(scored.outcomes()));
        return outcomes;
    }

    /** The same by stage and milestone, in the order they happen; those without any are left out. */
    public List<Scored> byEvent() {
        Map<Stage, Map<Milestone, List<Outcome>>> outcomes = new EnumMap<>(Stage.class);
        ProbeHistories histories = new ProbeHistories(readings);
        book.broods()
                .forEach(brood -> book.find(brood.code())
                        .filter(Teachers::isCompleted)
                        .ifPresent(record -> score(record, histories, outcomes)));
        return outcomes.entrySet().stream()
                .flatMap(stage -> stage.getValue().entrySet().stream()
                        .map(event -> new Scored(stage.getKey(), event.getKey(), event.getValue())))
                .toList();
    }

    private void score(BroodRecord written, ProbeHistories histories, Map<Stage, Map<Milestone, List<Outcome>>> into) {
        List<MadeForecast> made = archive.of(written.brood().code());
        Optional<Instant> last = written.checks().stream().map(Check::at).max(Instant::compareTo);
        if (made.isEmpty() || last.isEmpty()) {
            return;
        }
        BroodRecord whole = written.withReadings(histories.of(written, last.get()));
        BroodForecast truth =
                forecaster.apply(new ForecastQuestion(whole, last.get(), PastBroods.NONE, SEED, List.of()));
        for (MadeForecast forecast : made) {
            for (MadeForecast.Event event : forecast.events()) {
                Milestone.fromKey(event.milestone())
                        .ifPresent(milestone -> happened(truth, event, milestone)
                                .filter(at -> at.isAfter(forecast.asOf()))
                                .ifPresent(at -> into.computeIfAbsent(
                                                event.into(), unseen -> new EnumMap<>(Milestone.class))
                                        .computeIfAbsent(milestone, unseen -> new ArrayList<>())
                                        .add(new Outcome(
                                                forecast.asOf(), InstantInterval.through(event.twentieths()), at))));
            }
        }
    }

    private static Optional<Instant> happened(BroodForecast truth, MadeForecast.Event event, Milestone milestone) {
        return event.tray().equals(Account.SAC.code())
                ? happenedInSac(truth, event.into())
                : happenedInTray(truth, event, milestone);
    }

    /** Of all trays that came of the sac, the mean of their halves by animals; empty where no looks bracket them. */
    private static Optional<Instant> happenedInSac(BroodForecast truth, Stage into) {
        double animals = 0;
        double weighted = 0;
        for (TrayForecast tray : truth.trays()) {
            for (MoultForecast moult : tray.moults()) {
                if (moult.into() == into) {
                    if (moult.half().p90().isAfter(truth.asOf()) || !isBracketed(moult.half())) {
                        return Optional.empty();
                    }
                    animals += moult.passed();
                    weighted += moult.passed() * moult.half().p50().toEpochMilli();
                }
            }
        }
        return animals > 0 ? Optional.of(Instant.ofEpochMilli(Math.round(weighted / animals))) : Optional.empty();
    }

    /** What was over when the sac was opened nobody saw: only the model says when it was. */
    private static boolean isBracketed(InstantInterval half) {
        return Duration.between(half.p10(), half.p90()).compareTo(WIDEST_BRACKET) <= 0;
    }

    private static Optional<Instant> happenedInTray(
            BroodForecast truth, MadeForecast.Event event, Milestone milestone) {
        return truth.tray(event.tray()).stream()
                .flatMap(tray -> tray.moults().stream())
                .filter(moult -> moult.into() == event.into())
                .map(moult -> moult.at(milestone))
                .filter(interval -> !interval.p90().isAfter(truth.asOf()))
                .map(InstantInterval::p50)
                .findFirst();
    }

    /** What became of the forecasts of one event. */
    public record Scored(Stage into, Milestone milestone, List<Outcome> outcomes) {
        public Scored {
            outcomes = List.copyOf(outcomes);
        }
    }
}
