package org.moultwright.compute.forecast;

import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.moultwright.compute.climate.AgeOrigin;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.InstantRange;
import org.moultwright.domain.LedgerEntry;
import org.moultwright.domain.Stage;

/**
 * How old the animals are where their age begins to be counted.
 *
 * <p>0 at laying, which is unsure by its range. Where laying is unknown, the animals are taken to be half
 * way through the youngest stage first seen or put into a tray, anywhere within it being as likely.
 *
 * @param warmDays the age
 * @param halfWidthWarmDays it may be off by as much either way, anything between as likely
 */
record StartingAge(double warmDays, double halfWidthWarmDays) {
    private static final double MILLIS_PER_DAY = Duration.ofDays(1).toMillis();

    static StartingAge of(BroodRecord record, AgeOrigin origin, List<Stage> boundaries, double[] medianWarmDays) {
        if (origin.isLaying()) {
            double days = record.brood()
                            .laid()
                            .map(InstantRange::width)
                            .orElse(Duration.ZERO)
                            .toMillis()
                    / MILLIS_PER_DAY;
            return new StartingAge(0, days / 2);
        }
        Stage youngest = youngestSeen(record).orElse(Stage.EGG);
        int entered = (int) boundaries.stream().filter(youngest::isAtLeast).count();
        double from = entered == 0 ? 0 : medianWarmDays[entered - 1];
        double to = entered < medianWarmDays.length ? medianWarmDays[entered] : 1.2 * from;
        return new StartingAge((from + to) / 2, (to - from) / 2);
    }

    private static Optional<Stage> youngestSeen(BroodRecord record) {
        Optional<Stage> looked = record.checks().stream()
                .findFirst()
                .flatMap(check -> check.looks().entrySet().stream()
                        .filter(look -> look.getValue().showsAny())
                        .map(look -> look.getKey())
                        .min(Comparator.naturalOrder()));
        return looked.or(() -> record.ledger().standing().stream().findFirst().map(LedgerEntry::stage));
    }
}
