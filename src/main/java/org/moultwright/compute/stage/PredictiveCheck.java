package org.moultwright.compute.stage;

import java.util.List;

/**
 * Whether counts such as one tray's could come of the model at all: a posterior predictive check (Gelman, Meng
 * &amp; Stern 1996) of how far the newly passed scatter about what is expected of each step.
 */
public final class PredictiveCheck {
    private static final int DRAWS = 200;

    private PredictiveCheck() {}

    /**
     * The share of data sets drawn from the posterior that scatter at least as far as the tray's own: near 0 where
     * the model cannot explain it, whatever its parameters.
     *
     * @param tray its place among the trays the draws are of
     */
    public static double chance(TrayHistory history, int tray, PosteriorDraws posterior, Chance chance) {
        List<StageParameters> draws = posterior.draws();
        int stride = Math.max(1, draws.size() / DRAWS);
        int asFar = 0;
        int tried = 0;
        for (int draw = 0; draw < draws.size(); draw += stride) {
            double own = 0;
            double replicated = 0;
            for (int k = 0; k < history.evidence().size(); k++) {
                PassingLaw law = draws.get(draw).law(tray, k);
                own += history.evidence().get(k).scatter(law);
                replicated += history.evidence().get(k).replicatedScatter(law, chance);
            }
            asFar += replicated >= own ? 1 : 0;
            tried++;
        }
        return (double) asFar / tried;
    }
}
