package org.moultwright.compute.stage;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.linear.RealMatrix;

/**
 * Possible truths about a brood in the light of its evidence, each as likely as the others.
 *
 * @param draws the truths
 * @param effectiveShare share of the sampled points that carried weight
 * @param isCoarse whether the sampler had to fall back to its coarser way
 */
public record PosteriorDraws(List<StageParameters> draws, double effectiveShare, boolean isCoarse) {
    public PosteriorDraws {
        draws = List.copyOf(draws);
    }

    /** Truths about a brood with these trays; the same seed gives the same bits. */
    public static PosteriorDraws of(List<TrayHistory> trays, StagePrior prior, int size, long seed) {
        StagePosterior posterior = new StagePosterior(trays, prior);
        Shear shear = new Shear(posterior.coordinates(), trays);
        ModeFinder.Mode mode = ModeFinder.of(posterior);
        RealMatrix slopes = shear.slopes(mode.point());
        RealMatrix spread = slopes.multiply(mode.covariance()).multiply(slopes.transpose());
        ImportanceSampler.Sample sample = new ImportanceSampler(
                        bent -> posterior.logDensity(shear.plain(bent)), new Chance(seed))
                .sample(shear.bent(mode.point()), spread.getData(), size);
        List<StageParameters> draws = new ArrayList<>();
        sample.points().forEach(bent -> draws.add(posterior.coordinates().parameters(shear.plain(bent))));
        return new PosteriorDraws(draws, sample.effectiveShare(), sample.isCoarse());
    }
}
