package org.moultwright.benchmark;

import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.moultwright.domain.Brood;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.Stage;

/** An invented brood of which nothing is written but its readings. */
final class BenchmarkBrood {
    private BenchmarkBrood() {}

    static BroodRecord record() {
        return BroodRecord.of(new Brood(
                "BB-26-A",
                "Invented species",
                ZoneId.of("UTC"),
                Optional.empty(),
                Optional.empty(),
                List.of(Stage.EGG, Stage.INSTAR2),
                27,
                Optional.empty()));
    }
}
