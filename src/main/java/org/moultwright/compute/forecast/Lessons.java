package org.moultwright.compute.forecast;

import java.util.List;
import java.util.stream.Stream;
import org.moultwright.compute.stage.StageFit;

/**
 * What completed broods taught.
 *
 * @param fits the timing of each
 * @param lives the deaths of each
 * @param widthFactor by how much wider intervals ought to be than the model makes them
 */
record Lessons(List<StageFit> fits, List<LifeTable> lives, double widthFactor) {
    static final Lessons NONE = new Lessons(List.of(), List.of(), 1);

    Lessons {
        fits = List.copyOf(fits);
        lives = List.copyOf(lives);
    }

    boolean isEmpty() {
        return fits.isEmpty();
    }

    /** What they teach together with one more brood; the width stays to be judged. */
    Lessons and(StageFit fit, LifeTable life) {
        return new Lessons(
                Stream.concat(fits.stream(), Stream.of(fit)).toList(),
                Stream.concat(lives.stream(), Stream.of(life)).toList(),
                1);
    }

    Lessons withWidthFactor(double factor) {
        return new Lessons(fits, lives, factor);
    }
}
