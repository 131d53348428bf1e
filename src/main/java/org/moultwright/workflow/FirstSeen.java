package org.moultwright.workflow;

import java.time.Instant;
import java.util.Optional;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.Check;
import org.moultwright.domain.Look;
import org.moultwright.domain.Stage;

/** When animals that had entered a stage were first seen in a tray. */
public final class FirstSeen {
    private FirstSeen() {}

    public static Optional<Instant> in(BroodRecord record, String tray, Stage into) {
        return record.checks().stream()
                .filter(check -> check.tray().equals(tray))
                .filter(check -> check.looks().entrySet().stream()
                        .anyMatch(look -> look.getKey().compareTo(into) >= 0 && shows(look.getValue())))
                .map(Check::at)
                .min(Instant::compareTo);
    }

    private static boolean shows(Look look) {
        if (look instanceof Look.Full full) {
            return full.count() > 0;
        }
        return look instanceof Look.Seen || (look instanceof Look.Sample sample && sample.count() > 0);
    }
}
