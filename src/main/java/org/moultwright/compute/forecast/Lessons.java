package org.moultwright.compute.forecast;

import java.util.List;
import java.util.stream.Stream;
import org.moultwright.compute.stage.StageFit;

/**
 * What completed broods taught.
 *
 * @param fits the timing of each
 * @param lives their deaths together
 * @param widthFactor by how much wider intervals ought to be than the model makes them
 */
record Lessons(List<StageFit> fits, LifeTable lives, double widthFactor) {
    static final Lessons NONE = new Lessons(List.of(), LifeTable.empty(), 1);

    Lessons {
        fits = List.copyOf(fits);
    }

    boolean isEmpty() {
        return fits.isEmpty();
    }

    /** What they teach together with one more brood; the width stays to be judged. */
    Lessons and(StageFit fit, LifeTable life) {
        return new Lessons(Stream.concat(fits.stream(), Stream.of(fit)).toList(), lives.plus(life), 1);
    }

    Lessons withWidthFactor(double factor) {
        return new Lessons(fits, lives, factor);
    }
}
