package org.moultwright.compute.frequency;

import java.util.List;
import org.moultwright.domain.Require;

/**
 * An independent sample of a population at one time, sorted by stage.
 *
 * @param time physiological time, above 0, such as degree-days
 * @param counts animals in each stage, in order of stages
 */
public record StageSample(double time, List<Integer> counts) {
    public StageSample {
        Require.that(time > 0, "time is " + time + " but must be above 0");
        counts = List.copyOf(counts);
        counts.forEach(count -> Require.atLeast("counts", count, 0));
    }

    int total() {
        return counts.stream().mapToInt(Integer::intValue).sum();
    }
}
