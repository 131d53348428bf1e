package org.moultwright.compute.forecast;

import org.moultwright.domain.Stage;

/**
 * When the animals of one tray enter one stage.
 *
 * @param into the stage they enter
 * @param passed how many have entered it already, by what is known
 * @param first when the first one does
 * @param half when half of those that ever will have done so
 * @param most when 95 % of those that ever will have done so
 */
public record MoultForecast(
        Stage into, double passed, InstantInterval first, InstantInterval half, InstantInterval most) {

    /** Whether the first animal is known to have entered the stage: then no day is foretold for it. */
    public boolean hasBegun() {
        return Math.round(passed) >= 1;
    }

    /** When a milestone is reached. */
    public InstantInterval at(Milestone milestone) {
        return switch (milestone) {
            case FIRST -> first;
            case HALF -> half;
            case MOST -> most;
        };
    }
}
