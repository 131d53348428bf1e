package org.moultwright.compute.forecast;

import java.util.List;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.Stage;

/** The stages whose entering is forecast. */
final class Boundaries {
    private Boundaries() {}

    /** All stages of a brood but its first; the dark cue only where some look has asked for it. */
    static List<Stage> of(BroodRecord record) {
        boolean isCueUsed =
                record.checks().stream().anyMatch(check -> check.looks().containsKey(Stage.DARKENED));
        return record.brood().stages().stream()
                .skip(1)
                .filter(stage -> stage != Stage.DARKENED
                        || isCueUsed
                        || stage == record.brood().lastStage())
                .toList();
    }
}
