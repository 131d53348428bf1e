package org.moultwright.compute.forecast;

import java.util.List;
import org.moultwright.compute.stage.PosteriorDraws;
import org.moultwright.compute.stage.StageParameters;

/**
 * Possible truths about a brood, and with each how dangerous its animals' life is.
 *
 * @param posterior truths about its timing
 * @param hazards for each of those, by part of life
 * @param mortality how likely an animal is to live on
 * @param bursts by tray, for each of those, when mould next breaks out in it
 * @param likeBefore by boundary, how an animal's log age there correlates with that at the boundary before
 */
@SuppressWarnings("ArrayRecordComponent") // Made once, never changed, never compared.
record Outlook(
        PosteriorDraws posterior,
        List<double[]> hazards,
        Mortality mortality,
        List<Bursts> bursts,
        double[] likeBefore) {
    int size() {
        return hazards.size();
    }

    /** How many independent truths they are worth. */
    double effectiveSize() {
        return Math.max(1, Math.min(1, posterior.effectiveShare()) * size());
    }

    StageParameters parameters(int draw) {
        return posterior.draws().get(draw);
    }

    /** The chance of an animal of a tray to live from one age to another. */
    double survival(int tray, int draw, double fromAge, double toAge) {
        return mortality.survival(fromAge, toAge, parameters(draw), hazards.get(draw))
                * bursts.get(tray).survival(draw, fromAge, toAge);
    }
}
