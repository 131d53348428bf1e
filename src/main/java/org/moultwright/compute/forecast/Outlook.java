package org.moultwright.compute.forecast;

import org.moultwright.compute.stage.PosteriorDraws;
import org.moultwright.compute.stage.StageParameters;

/**
 * Possible truths about a brood, and with each how frail its animals are.
 *
 * @param posterior truths about its timing
 * @param frailty one for each of those
 * @param mortality how likely an animal is to live on
 */
@SuppressWarnings("ArrayRecordComponent") // Made once, never changed, never compared.
record Outlook(PosteriorDraws posterior, double[] frailty, Mortality mortality) {
    int size() {
        return frailty.length;
    }

    StageParameters parameters(int draw) {
        return posterior.draws().get(draw);
    }

    double survival(int draw, double fromAge, double toAge) {
        return mortality.survival(fromAge, toAge, parameters(draw), frailty[draw]);
    }
}
