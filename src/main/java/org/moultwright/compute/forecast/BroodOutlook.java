package org.moultwright.compute.forecast;

import java.util.ArrayList;
import java.util.List;
import org.moultwright.compute.climate.WarmDays;
import org.moultwright.compute.stage.Chance;
import org.moultwright.compute.stage.PosteriorDraws;
import org.moultwright.compute.stage.StagePrior;
import org.moultwright.compute.stage.TrayHistory;
import org.moultwright.domain.Stage;

/** Puts the forecast of one brood together from what can be seen of it and what is believed. */
final class BroodOutlook {
    private static final int DRAWS = 1000;

    private final ForecastQuestion question;
    private final BroodSight sight;
    private final Outlook outlook;
    private final List<Integer> usable;
    private final int[] yields = new int[DRAWS];

    BroodOutlook(ForecastQuestion question, BroodSight sight, StagePrior prior, Mortality mortality) {
        this.question = question;
        this.sight = sight;
        this.usable = sight.usableTrays();
        List<TrayHistory> trays =
                usable.stream().map(index -> sight.trays().get(index)).toList();
        PosteriorDraws posterior = PosteriorDraws.of(trays, prior, DRAWS, question.seed());
        Chance chance = new Chance(question.seed() + 1);
        double[] frailty = new double[DRAWS];
        for (int draw = 0; draw < DRAWS; draw++) {
            frailty[draw] = mortality.frailty(chance);
        }
        this.outlook = new Outlook(posterior, frailty, mortality);
    }

    boolean isCoarse() {
        return outlook.posterior().isCoarse();
    }

    /** One forecast for each tray, in order; the yield is known after it. */
    List<TrayForecast> trays() {
        List<TrayForecast> forecasts = new ArrayList<>();
        for (int tray = 0; tray < sight.trays().size(); tray++) {
            int fitted = usable.indexOf(tray);
            forecasts.add(fitted < 0 ? bare(sight, tray) : forecast(tray, fitted));
        }
        return forecasts;
    }

    /** How many animals pass the last boundary in the end, all trays together. */
    CountInterval finallyPassed() {
        double[] sums = new double[DRAWS];
        for (int draw = 0; draw < DRAWS; draw++) {
            sums[draw] = yields[draw];
        }
        return Quantiles.of(sums).counts();
    }

    /** A tray of which nothing can be said. */
    static TrayForecast bare(BroodSight sight, int tray) {
        return new TrayForecast(
                sight.trays().get(tray).tray(),
                age(sight, tray),
                sight.trays().get(tray).alive(),
                List.of(),
                List.of());
    }

    private static double age(BroodSight sight, int tray) {
        return sight.startingAge().warmDays() + sight.lived().get(tray).total();
    }

    private TrayForecast forecast(int tray, int fitted) {
        TrayHistory history = sight.trays().get(tray);
        WarmDays lived = sight.lived().get(tray);
        // One seed for all trays: the room's weather is common to them.
        FutureClimate future = FutureClimate.after(lived.temperature(), sight.rate(), question.seed() + 2);
        TrayClock clock = new TrayClock(lived, sight.startingAge().warmDays(), question.asOf(), future);
        Chance chance = new Chance(question.seed() + 3 + tray);
        MoultDates dates = new MoultDates(history, fitted, clock, outlook, chance);
        int[] passes = dates.finallyPassedLast();
        List<MoultForecast> moults = stillToTell(history, dates.forecasts(sight.boundaries()));
        for (int draw = 0; draw < DRAWS; draw++) {
            yields[draw] += history.alive() > 0 ? passes[draw] : passedLast(moults);
        }
        TrayComposition composition = new TrayComposition(history, fitted, clock, outlook, sight.boundaries());
        Stage lowest = sight.record().brood().stages().get(0);
        return new TrayForecast(
                history.tray(),
                clock.age(),
                history.alive(),
                moults,
                question.compositionAt().stream()
                        .map(instant -> composition.at(instant, lowest, chance))
                        .toList());
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
