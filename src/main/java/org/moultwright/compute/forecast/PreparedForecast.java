package org.moultwright.compute.forecast;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.moultwright.compute.climate.LivedTemperature;
import org.moultwright.compute.climate.WarmDays;
import org.moultwright.compute.stage.Chance;
import org.moultwright.compute.stage.TrayHistory;
import org.moultwright.domain.Stage;

/**
 * All of a forecast that does not depend on the temperatures to come, worked out once: what the trays showed,
 * and what may be true of them. Forecasts under any plan follow from it quickly.
 *
 * <p>Immutable and safe to share; the same question gives the same bits.
 */
public final class PreparedForecast {
    private final ForecastQuestion question;
    private final BroodSight sight;
    private final PriorSource priorFrom;
    private final Lessons lessons;
    private final Optional<Outlook> outlook;
    private final List<Optional<MoultAges>> ages;
    private final Map<WarmDays, PastClock> past = new HashMap<>();
    private final List<ExpectedAge> expectedAges;
    private final List<ForecastNote> notes;

    PreparedForecast(
            ForecastQuestion question,
            BroodSight sight,
            PriorSource priorFrom,
            Lessons lessons,
            Optional<Outlook> outlook,
            List<ExpectedAge> expectedAges,
            List<ForecastNote> notes) {
        this.question = question;
        this.sight = sight;
        this.priorFrom = priorFrom;
        this.lessons = lessons;
        this.outlook = outlook;
        this.expectedAges = List.copyOf(expectedAges);
        this.notes = List.copyOf(notes);
        List<Integer> usable = sight.usableTrays();
        List<Optional<MoultAges>> played = new ArrayList<>();
        for (int tray = 0; tray < sight.trays().size(); tray++) {
            int index = tray;
            int fitted = usable.indexOf(tray);
            played.add(outlook.filter(found -> fitted >= 0)
                    .map(found -> new MoultAges(
                            sight.trays().get(index), fitted, found, new Chance(question.seed() + 3 + index))));
        }
        this.ages = List.copyOf(played);
        sight.lived().forEach(warmDays -> past.computeIfAbsent(warmDays, PastClock::new));
    }

    /** The instant of the question. */
    public Instant asOf() {
        return question.asOf();
    }

    /** The forecast if the animals' place is set as planned. */
    public BroodForecast under(ClimatePlan plan) {
        Map<LivedTemperature, FutureClimate> futures = new HashMap<>();
        List<TrayForecast> trays = new ArrayList<>();
        for (int tray = 0; tray < sight.trays().size(); tray++) {
            // One seed for all trays: the room's weather is common to them.
            FutureClimate future = futures.computeIfAbsent(
                    sight.lived().get(tray).temperature(),
                    lived -> FutureClimate.after(lived, sight.rate(), plan, question.seed() + 2));
            trays.add(
                    ages.get(tray).isEmpty()
                            ? bare(tray)
                            : forecast(tray, ages.get(tray).get(), future));
        }
        return new BroodForecast(
                sight.record().brood().code(),
                question.asOf(),
                sight.meanAge(),
                sight.meanGapFraction(),
                priorFrom,
                lessons.fits().size(),
                sight.isUnopened() ? List.of() : trays,
                sight.record().brood().lastStage(),
                outlook.filter(found -> !sight.isUnopened()).map(found -> finallyPassed(found, trays)),
                sight.isUnopened() ? Optional.of(sac(trays.get(0))) : Optional.empty(),
                expectedAges,
                notesOn(trays));
    }

    /** What was to be said before any temperature to come was known, and what they make of it. */
    private List<ForecastNote> notesOn(List<TrayForecast> trays) {
        List<ForecastNote> all = new ArrayList<>(notes);
        trays.stream()
                .filter(tray ->
                        tray.moults().stream().anyMatch(moult -> moult.half().isFarFrom(question.asOf())))
                .map(tray -> new ForecastNote(
                        ForecastNote.Kind.HARDLY_DEVELOPS, sight.isUnopened() ? "" : tray.tray(), Double.NaN))
                .forEach(all::add);
        return all;
    }

    private SacForecast sac(TrayForecast inside) {
        double days = Duration.between(sight.origin().at(), question.asOf()).toMillis()
                / (double) Duration.ofDays(1).toMillis();
        return new SacForecast(inside.warmDays(), days, inside.moults());
    }

    /** What the place a tray stands in is set to now, in °C; empty where there is no such tray. */
    public OptionalDouble setPointCelsius(String tray) {
        return IntStream.range(0, sight.trays().size())
                .filter(index -> sight.trays().get(index).tray().equals(tray))
                .mapToDouble(index -> sight.lived().get(index).temperature().nominalCelsius())
                .findFirst();
    }

    /** A tray of which nothing can be said. */
    private TrayForecast bare(int tray) {
        TrayHistory history = sight.trays().get(tray);
        double age = sight.ageOf(tray);
        return new TrayForecast(history.tray(), age, history.alive(), List.of(), List.of());
    }

    private TrayForecast forecast(int tray, MoultAges played, FutureClimate future) {
        TrayHistory history = sight.trays().get(tray);
        WarmDays lived = sight.lived().get(tray);
        PastClock before = Objects.requireNonNull(past.get(lived));
        TrayClock clock = new TrayClock(lived, before, sight.startingAge().warmDays(), question.asOf(), future);
        Chance chance = new Chance(question.seed() - 1 - tray);
        TrayComposition composition = new TrayComposition(
                history, sight.usableTrays().indexOf(tray), clock, outlook.orElseThrow(), sight.boundaries());
        Stage lowest = sight.record().brood().stages().get(0);
        List<Instant> instants = question.compositionAt();
        MoultDates dates = new MoultDates(history, played, clock, lessons.widthFactor());
        return new TrayForecast(
                history.tray(),
                clock.age(),
                history.alive(),
                stillToTell(history, dates.forecasts(sight.boundaries())),
                instants.stream()
                        .map(instant -> composition.at(instant, lowest, chance))
                        .toList(),
                dates.possible(sight.boundaries(), outlook.orElseThrow().effectiveSize()));
    }

    /** How many animals pass the last boundary in the end, all trays together. */
    private CountInterval finallyPassed(Outlook found, List<TrayForecast> forecasts) {
        double[] sums = new double[found.size()];
        for (int tray = 0; tray < forecasts.size(); tray++) {
            if (ages.get(tray).isPresent()) {
                boolean isOver = sight.trays().get(tray).alive() <= 0;
                int[] passes = ages.get(tray).get().finallyPassedLast();
                for (int draw = 0; draw < sums.length; draw++) {
                    sums[draw] += isOver ? passedLast(forecasts.get(tray).moults()) : passes[draw];
                }
            }
        }
        return Quantiles.of(sums).counts();
    }

    /** How many had entered the last stage before the tray was empty. */
    private int passedLast(List<MoultForecast> moults) {
        Stage last = sight.record().brood().lastStage();
        return moults.stream()
                .filter(moult -> moult.into() == last)
                .mapToInt(moult -> (int) Math.rint(moult.passed()))
                .sum();
    }

    /** Where nobody is left, only what has happened can be told. */
    private static List<MoultForecast> stillToTell(TrayHistory history, List<MoultForecast> moults) {
        return history.alive() > 0
                ? moults
                : moults.stream().filter(moult -> moult.passed() > 0).toList();
    }
}
