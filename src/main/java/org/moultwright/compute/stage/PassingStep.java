package org.moultwright.compute.stage;

import java.util.List;

/**
 * What is known of one boundary between two looks that counted it.
 *
 * @param fromAge age at the earlier look, in warm-days
 * @param toAge age at the later look
 * @param waiting animals that could have passed in between
 * @param passed those that did, within [0, waiting]
 * @param glimpses what partial looks in between said, in order
 */
record PassingStep(double fromAge, double toAge, double waiting, double passed, List<Glimpse> glimpses) {
    /** The chance of an animal waiting at the earlier look to be read as passed at the later. */
    double chance(PassingLaw law) {
        return PassingLaw.readAsPassed(law.passedIfWaitingAt(fromAge, toAge));
    }

    /** (observed − expected)² over the variance, for so many passed of those waiting. */
    double scatter(double passedNow, double chance) {
        double animals = Math.rint(waiting);
        double expected = animals * chance;
        return animals > 0 ? (passedNow - expected) * (passedNow - expected) / (expected * (1 - chance)) : 0;
    }
}
