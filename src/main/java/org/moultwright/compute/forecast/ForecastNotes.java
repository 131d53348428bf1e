package org.moultwright.compute.forecast;

import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.moultwright.compute.climate.LivedSpan;
import org.moultwright.compute.climate.TemperatureSource;
import org.moultwright.compute.stage.Chance;
import org.moultwright.compute.stage.PosteriorDraws;
import org.moultwright.compute.stage.PredictiveCheck;
import org.moultwright.compute.stage.TrayHistory;
import org.moultwright.domain.Account;
import org.moultwright.domain.Check;

/** Gathers what a reader of a forecast must know, each once. Not safe to share. */
final class ForecastNotes {
    private static final double WORTH_SAYING_PERCENT = 1;
    private static final double WIDENING_WORTH_SAYING_PERCENT = 5;
    private static final double HARDLY_POSSIBLE = 0.005;

    /** Two animals are easily miscounted (decision 91). */
    private static final int MISCOUNTED = 2;

    private final Set<ForecastNote> notes = new LinkedHashSet<>();

    ForecastNotes(BroodSight sight, PriorSource source, double widthFactor) {
        if (!sight.origin().isLaying()) {
            add(ForecastNote.Kind.AGES_FROM_FIRST_CHECK, "", sight.startingAge().warmDays());
        }
        if (source == PriorSource.GENERAL) {
            add(ForecastNote.Kind.GENERAL_TIMING_ASSUMED, "", Double.NaN);
        }
        double widerPercent = 100 * (widthFactor - 1);
        if (widerPercent >= WIDENING_WORTH_SAYING_PERCENT) {
            add(ForecastNote.Kind.INTERVALS_WIDENED, "", widerPercent);
        }
        before(sight);
        temperature(sight);
        sight.trays().forEach(tray -> counts(sight, tray));
        if (sight.trays().isEmpty()) {
            add(ForecastNote.Kind.TOO_LITTLE_TO_GO_ON, "", Double.NaN);
        }
        if (sight.isUnopened()) {
            add(ForecastNote.Kind.SAC_UNOPENED, "", SacForecast.EGGS_SUPPOSED);
        }
    }

    /** Says if the sampler fell back. */
    void posterior(boolean isCoarse) {
        if (isCoarse) {
            add(ForecastNote.Kind.COARSE_POSTERIOR, "", Double.NaN);
        }
    }

    /** Says of which trays the counts contradict the model. */
    void contradictions(BroodSight sight, PosteriorDraws posterior, Chance chance) {
        List<Integer> usable = sight.usableTrays();
        for (int fitted = 0; fitted < usable.size(); fitted++) {
            TrayHistory tray = sight.trays().get(usable.get(fitted));
            double asFar = PredictiveCheck.chance(tray, fitted, posterior, chance);
            if (asFar < HARDLY_POSSIBLE) {
                add(ForecastNote.Kind.COUNTS_BEYOND_MODEL, tray.tray(), asFar);
            }
        }
    }

    List<ForecastNote> all() {
        return List.copyOf(notes);
    }

    private void temperature(BroodSight sight) {
        double filledPercent = 100 * sight.meanGapFraction();
        if (filledPercent >= WORTH_SAYING_PERCENT) {
            add(ForecastNote.Kind.GAPS_FILLED, "", filledPercent);
        }
        sight.lived().stream()
                .flatMap(warmDays -> warmDays.temperature().spans().stream())
                .map(LivedSpan::source)
                .distinct()
                .forEach(this::standIn);
    }

    private void standIn(TemperatureSource source) {
        if (source instanceof TemperatureSource.SetPointAlone setPoint) {
            add(ForecastNote.Kind.SET_POINT_STANDS_IN, setPoint.container(), Double.NaN);
        } else if (source instanceof TemperatureSource.BetweenExtremes extremes) {
            add(ForecastNote.Kind.EXTREMES_STAND_IN, extremes.container(), Double.NaN);
        } else if (source instanceof TemperatureSource.Reference) {
            add(ForecastNote.Kind.REFERENCE_TEMPERATURE_STANDS_IN, "", Double.NaN);
        }
    }

    private void before(BroodSight sight) {
        long early = sight.record().checks().stream()
                .filter(check -> check.at().isBefore(sight.origin().at()))
                .count();
        if (early > 0) {
            add(ForecastNote.Kind.CHECKS_BEFORE_LAYING, "", (double) early);
        }
        boolean isOpenedBefore = sight.record().brood().laid().stream()
                .anyMatch(laid -> sight.record().ledger().standing().stream()
                        .anyMatch(entry -> entry.from().equals(Account.SAC)
                                && entry.to().isTray()
                                && entry.at().isBefore(laid.earliest())));
        if (isOpenedBefore) {
            add(ForecastNote.Kind.OPENED_BEFORE_LAYING, "", Double.NaN);
        }
    }

    private void counts(BroodSight sight, TrayHistory tray) {
        double difference = tray.animals() - tray.opened();
        if (Math.round(tray.animals()) == 0) {
            add(ForecastNote.Kind.TOO_LITTLE_TO_GO_ON, tray.tray(), Double.NaN);
        } else if (Math.round(tray.alive()) == 0) {
            add(ForecastNote.Kind.NONE_ALIVE, tray.tray(), Double.NaN);
        }
        if (tray.opened() > 0 && Math.abs(difference) >= 1) {
            add(ForecastNote.Kind.COUNTS_DISAGREE, tray.tray(), difference);
        }
        lastCountOff(sight, tray.tray())
                .filter(off -> Math.abs(off) > MISCOUNTED && Math.abs(off - difference) > MISCOUNTED)
                .ifPresent(off -> add(ForecastNote.Kind.LAST_COUNT_OFF, tray.tray(), Math.abs(off)));
    }

    /** What the last whole count of a tray found more than the ledger has there. */
    private static Optional<Integer> lastCountOff(BroodSight sight, String tray) {
        return sight.record().checks().stream()
                .filter(check -> check.tray().equals(tray)
                        && check.total().isPresent()
                        && !check.at().isBefore(sight.origin().at()))
                .max(Comparator.comparing(Check::at))
                .map(check -> check.total().orElseThrow()
                        - sight.record().ledger().at(check.at()).balance(Account.tray(tray)));
    }

    private void add(ForecastNote.Kind kind, String subject, double value) {
        notes.add(new ForecastNote(kind, subject, value));
    }
}
