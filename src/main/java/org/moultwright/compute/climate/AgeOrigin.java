package org.moultwright.compute.climate;

import java.time.Instant;
import java.util.Comparator;
import java.util.Optional;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.Check;
import org.moultwright.domain.InstantRange;
import org.moultwright.domain.LedgerEntry;

/**
 * The instant from which the age of a brood counts.
 *
 * @param at the instant
 * @param isLaying whether it is the laying, half way between its earliest and latest; otherwise it is the
 *     first check, or with none the pulling or the first entry of the ledger
 */
public record AgeOrigin(Instant at, boolean isLaying) {

    /** The origin of a brood's age, or empty if nothing at all about it has a date. */
    public static Optional<AgeOrigin> of(BroodRecord record) {
        Optional<AgeOrigin> laying =
                record.brood().laid().map(InstantRange::middle).map(middle -> new AgeOrigin(middle, true));
        return laying.or(() -> firstCheck(record)
                .or(() -> record.brood().pulled())
                .or(() ->
                        record.ledger().entries().stream().map(LedgerEntry::at).findFirst())
                .map(at -> new AgeOrigin(at, false)));
    }

    private static Optional<Instant> firstCheck(BroodRecord record) {
        return record.checks().stream().map(Check::at).min(Comparator.naturalOrder());
    }
}
