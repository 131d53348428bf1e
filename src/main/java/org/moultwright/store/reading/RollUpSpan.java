package org.moultwright.store.reading;

import java.util.List;
import org.moultwright.domain.RollUpLevel;

/** The roll-ups that stand together in one row: a whole number of days of the finer levels. */
final class RollUpSpan {
    /** 4 days of quarter hours, 16 of hours. */
    static final int ROLL_UPS = 384;

    /** The levels that are kept; minutes are made of the readings themselves. */
    static final List<RollUpLevel> KEPT = List.of(RollUpLevel.QUARTER_HOUR, RollUpLevel.HOUR, RollUpLevel.DAY);

    private RollUpSpan() {}

    /** The number of the span a millisecond falls into. */
    static long of(RollUpLevel level, long epochMillis) {
        return Math.floorDiv(epochMillis, level.millis() * ROLL_UPS);
    }
}
