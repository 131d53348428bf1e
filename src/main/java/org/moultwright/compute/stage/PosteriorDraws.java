package org.moultwright.compute.stage;

import java.util.ArrayList;
import java.util.List;

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
        double[] mode = ModeFinder.mode(posterior::logDensity, posterior.dimension());
        ImportanceSampler.Sample sample = new ImportanceSampler(posterior::logDensity, new Chance(seed))
                .sample(mode, ModeFinder.spread(posterior::logDensity, mode), size);
        List<StageParameters> draws = new ArrayList<>();
        sample.points().forEach(point -> draws.add(posterior.parameters(point)));
        return new PosteriorDraws(draws, sample.effectiveShare(), sample.isCoarse());
    }
}
