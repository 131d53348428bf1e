package org.moultwright.compute.history;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.moultwright.compute.survival.KaplanMeier;
import org.moultwright.compute.survival.Lifetime;
import org.moultwright.compute.survival.SurvivalLimits;
import org.moultwright.compute.survival.SurvivalStep;
import org.moultwright.domain.Account;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.LedgerEntry;

/**
 * How many of a brood's animals survive in trays, by the product-limit estimate with Greenwood's error and log-log
 * limits of 95 %.
 *
 * <p>An animal is watched from the opening of the sac. Dead, missing, or found infertile in a tray, it has died on the
 * day that was written; potted or handed over, or alive now, it was watched until then. What was put aside on opening
 * was never watched. An earlier miscount changes how many there were.
 *
 * @param opened when the watch began
 * @param animals how many were watched
 * @param days how long the watch has lasted
 * @param points where the curve steps, in order; the first is the opening
 */
public record BroodSurvival(Instant opened, int animals, double days, List<Point> points) {
    private static final double CONFIDENCE = 0.95;
    private static final double MILLIS_PER_DAY = Duration.ofDays(1).toMillis();

    public BroodSurvival {
        points = List.copyOf(points);
    }

    /** A brood's survival up to an instant; empty while nothing of it was in a tray. */
    public static Optional<BroodSurvival> of(BroodRecord record, Instant now) {
        List<LedgerEntry> entries = record.ledger().at(now).standing();
        Optional<Instant> opened = entries.stream()
                .filter(entry -> entry.from().equals(Account.SAC) && entry.to().isTray())
                .map(LedgerEntry::at)
                .findFirst();
        return opened.flatMap(from -> of(entries, from, now));
    }

    private static Optional<BroodSurvival> of(List<LedgerEntry> entries, Instant opened, Instant now) {
        int animals = 0;
        List<Lifetime> lifetimes = new ArrayList<>();
        for (LedgerEntry entry : entries) {
            boolean fromTray = entry.from().isTray();
            boolean toTray = entry.to().isTray();
            if (entry.from().equals(Account.SAC) && toTray) {
                animals += entry.count();
            } else if (fromTray && entry.to().equals(Account.SAC)) {
                animals -= entry.count();
            } else if (fromTray && !toTray) {
                for (int i = 0; i < entry.count(); i++) {
                    lifetimes.add(
                            new Lifetime(days(opened, entry.at()), entry.to().isLoss()));
                }
            } else if (!fromTray && toTray) {
                takeBack(lifetimes, entry);
            }
        }
        double watched = days(opened, now);
        while (lifetimes.size() < animals) {
            lifetimes.add(new Lifetime(watched, false));
        }
        return animals <= 0
                ? Optional.empty()
                : Optional.of(new BroodSurvival(opened, animals, watched, points(KaplanMeier.of(lifetimes))));
    }

    /** Animals that came back into a tray were not gone after all: those written off last. */
    private static void takeBack(List<Lifetime> lifetimes, LedgerEntry entry) {
        int left = entry.count();
        for (int i = lifetimes.size() - 1; i >= 0 && left > 0; i--) {
            if (lifetimes.get(i).isEvent() == entry.from().isLoss()) {
                lifetimes.remove(i);
                left--;
            }
        }
    }

    private static List<Point> points(KaplanMeier curve) {
        List<Point> points = new ArrayList<>(List.of(new Point(0, 1, 1, 1)));
        for (SurvivalStep step : curve.steps()) {
            boolean isSure = Double.isNaN(step.standardError()) || step.survival() >= 1;
            SurvivalLimits limits = isSure
                    ? new SurvivalLimits(step.survival(), step.survival())
                    : SurvivalLimits.logLog(step.survival(), step.standardError(), CONFIDENCE);
            points.add(new Point(step.time(), step.survival(), limits.lower(), limits.upper()));
        }
        return points;
    }

    private static double days(Instant from, Instant to) {
        return Math.max(0, Duration.between(from, to).toMillis() / MILLIS_PER_DAY);
    }

    /** The share surviving now. */
    public Point last() {
        return points.get(points.size() - 1);
    }

    /**
     * From here on, until the next point.
     *
     * @param days since the opening
     * @param survival the share surviving
     * @param lower limit of 95 %
     * @param upper limit of 95 %
     */
    public record Point(double days, double survival, double lower, double upper) {}
}
