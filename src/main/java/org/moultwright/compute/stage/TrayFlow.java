package org.moultwright.compute.stage;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.moultwright.domain.Account;
import org.moultwright.domain.Cause;
import org.moultwright.domain.LedgerEntry;
import org.moultwright.domain.Stage;

/**
 * The animals that came to and left one tray, by the ledger.
 *
 * <p>Those put in at its opening belong to it from laying on. Those from other trays, or from the sac later,
 * count as negative losses: what they had passed before, they did not pass here. A tray that had none from the sac
 * opened with the first that came from another: all that is known of these here is what they were when they came.
 * Entries that only mend an earlier miscount moved no animal. A potted animal has passed every stage.
 */
final class TrayFlow {
    private final Account tray;
    private final List<LedgerEntry> entries;
    private final boolean isFromSac;
    private final Optional<Instant> opening;

    TrayFlow(String tray, List<LedgerEntry> standing) {
        this.tray = Account.tray(tray);
        this.entries = standing.stream()
                .filter(entry -> entry.effectOn(this.tray) != 0)
                .toList();
        this.isFromSac = entries.stream().anyMatch(TrayFlow::comesFromSac);
        this.opening =
                entries.stream().filter(this::mayOpen).map(LedgerEntry::at).findFirst();
    }

    /** When its first animals came out of the sac; where none did, out of another tray. */
    Optional<Instant> opening() {
        return opening;
    }

    /** Animals put in at the opening that had passed a boundary by then. */
    int openedPast(Stage boundary) {
        return entries.stream()
                .filter(entry -> isOpening(entry) && entry.stage().isAtLeast(boundary))
                .mapToInt(LedgerEntry::count)
                .sum();
    }

    /** All animals put in at the opening. */
    int opened() {
        return openedPast(Stage.EGG);
    }

    /** Animals that had passed a boundary and were gone by an instant, less those that came so. */
    int gonePast(Stage boundary, Instant by) {
        return gone(by) - goneBefore(boundary, by);
    }

    /** Animals that had not passed a boundary and were gone by an instant, less those that came so. */
    int goneBefore(Stage boundary, Instant by) {
        return entries.stream()
                .filter(entry -> isMoveBy(entry, by) && !hasPassed(entry, boundary))
                .mapToInt(entry -> -entry.effectOn(tray))
                .sum();
    }

    /** Animals gone by an instant, less those that came. */
    int gone(Instant by) {
        return entries.stream()
                .filter(entry -> isMoveBy(entry, by))
                .mapToInt(entry -> -entry.effectOn(tray))
                .sum();
    }

    /** Its animals found dead or missing. */
    List<TrayHistory.Loss> losses(ToDoubleFunction<Instant> age) {
        return entries.stream()
                .filter(entry -> entry.from().equals(tray) && !isMendedCount(entry))
                .filter(entry -> entry.to().equals(Account.DEAD) || entry.to().equals(Account.MISSING))
                .map(entry -> new TrayHistory.Loss(entry.stage(), age.applyAsDouble(entry.at()), entry.count()))
                .toList();
    }

    private boolean isMoveBy(LedgerEntry entry, Instant by) {
        return !entry.at().isAfter(by) && !isOpening(entry) && !isMendedCount(entry);
    }

    private boolean hasPassed(LedgerEntry entry, Stage boundary) {
        return entry.to().kind() == Account.Kind.POTTED || entry.stage().isAtLeast(boundary);
    }

    private static boolean comesFromSac(LedgerEntry entry) {
        return entry.from().kind() == Account.Kind.SAC && !isMendedCount(entry);
    }

    private boolean mayOpen(LedgerEntry entry) {
        return isFromSac
                ? comesFromSac(entry)
                : entry.from().isTray() && entry.to().equals(tray);
    }

    private boolean isOpening(LedgerEntry entry) {
        return mayOpen(entry) && opening.isPresent() && entry.at().equals(opening.get());
    }

    private static boolean isMendedCount(LedgerEntry entry) {
        return entry.cause().equals(Cause.EARLIER_MISCOUNT);
    }
}
