package org.moultwright.workflow;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.moultwright.compute.forecast.BroodForecast;
import org.moultwright.compute.forecast.TrayForecast;
import org.moultwright.domain.Account;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.Check;
import org.moultwright.domain.Shelf;
import org.moultwright.domain.Stage;
import org.moultwright.domain.TrayContents;

/**
 * One tray as it stands now.
 *
 * @param brood the code of the brood it holds
 * @param tray the tray's code
 * @param place the container it stands in, such as "box 1"; empty where nobody wrote it down
 * @param alive animals in it by the ledger
 * @param composition the stages last seen, less what was taken out since; they add up to {@code alive}
 *     where the last count was whole
 * @param lastCheck the last look at it
 * @param due whether tonight's look is done
 * @param forecast what is expected of it
 */
public record TrayView(
        String brood,
        String tray,
        String place,
        int alive,
        Map<Stage, Integer> composition,
        Optional<Check> lastCheck,
        Due due,
        Optional<TrayForecast> forecast) {

    /** Whether a tray has been looked at today. */
    public enum Due {
        DONE,
        DUE,
        LATE
    }

    /** A tray whose last look is more days ago than this is late (our own rule). */
    private static final int DAYS_UNTIL_LATE = 3;

    /** The trays of a brood that hold or held animals, in shelf order. */
    static List<TrayView> all(BroodRecord record, Optional<BroodForecast> forecast, Instant now) {
        Set<String> codes = new TreeSet<>();
        record.ledger().balances().keySet().stream()
                .filter(account -> account.isTray())
                .forEach(account -> codes.add(account.code()));
        record.checks().forEach(check -> codes.add(check.tray()));
        Shelf shelf = new Shelf(record.stays());
        return codes.stream()
                .map(code -> of(record, shelf, code, forecast.flatMap(f -> f.tray(code)), now))
                .sorted(Comparator.comparing(TrayView::place).thenComparing(TrayView::tray))
                .toList();
    }

    static TrayView of(BroodRecord record, Shelf shelf, String tray, Optional<TrayForecast> forecast, Instant now) {
        List<String> path = shelf.pathOf(tray, now);
        Optional<Check> last = record.checks().stream()
                .filter(check -> check.tray().equals(tray))
                .max(Comparator.comparing(Check::at));
        return new TrayView(
                record.brood().code(),
                tray,
                path.size() > 1 ? path.get(1) : "",
                record.ledger().balance(Account.tray(tray)),
                TrayContents.at(now, tray, record.ledger(), record.checks()).byStage(),
                last,
                due(last, record.brood().zone(), now),
                forecast);
    }

    /** This tray as it stands in what was written of its brood since, with the dates it had. */
    public TrayView in(BroodRecord record, Instant now) {
        return of(record, new Shelf(record.stays()), tray, forecast, now);
    }

    private static Due due(Optional<Check> last, ZoneId zone, Instant now) {
        LocalDate today = LocalDate.ofInstant(now, zone);
        long daysAgo = last.map(check -> ChronoUnit.DAYS.between(LocalDate.ofInstant(check.at(), zone), today))
                .orElse(1L);
        if (daysAgo <= 0) {
            return Due.DONE;
        }
        return daysAgo > DAYS_UNTIL_LATE ? Due.LATE : Due.DUE;
    }

    public Optional<Instant> lastLook() {
        return lastCheck.map(Check::at);
    }
}
