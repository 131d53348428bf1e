package org.moultwright.compute.history;

import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.Cause;

/** Whether numbers of animals rest on a weighing. */
public final class Estimates {
    private Estimates() {}

    /** Whether a tray's animals were weighed when its sac was opened, and nobody has counted them all since. */
    public static boolean isOneIn(BroodRecord record) {
        return record.ledger().standing().stream()
                .filter(entry -> entry.cause().equals(Cause.ESTIMATED))
                .anyMatch(entry -> record.checks().stream()
                        .noneMatch(check -> check.tray().equals(entry.to().code())
                                && check.total().isPresent()
                                && !check.at().isBefore(entry.at())));
    }
}
