package org.moultwright.compute.forecast;

import java.util.List;
import org.moultwright.compute.stage.StageFit;

/**
 * What completed broods taught.
 *
 * @param fits the timing of each
 * @param lives their deaths together
 */
record Lessons(List<StageFit> fits, LifeTable lives) {
    Lessons {
        fits = List.copyOf(fits);
    }

    boolean isEmpty() {
        return fits.isEmpty();
    }
}
