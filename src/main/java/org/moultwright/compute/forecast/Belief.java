package org.moultwright.compute.forecast;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.moultwright.compute.learning.KindLearner;
import org.moultwright.compute.rate.BelievedRate;
import org.moultwright.compute.rate.RateCurve;
import org.moultwright.compute.stage.NormalBelief;
import org.moultwright.compute.stage.StagePrior;
import org.moultwright.domain.AssumedTiming;
import org.moultwright.domain.AssumedTimings;
import org.moultwright.domain.Brood;
import org.moultwright.domain.RateForm;
import org.moultwright.domain.Stage;
import org.moultwright.domain.Timing;

/**
 * What is believed of a brood's timing before it has shown any.
 *
 * @param source where the belief came from
 * @param medianWarmDays median age at entering each boundary, in warm-days, rising
 * @param batchSd standard deviation of the log of the brood's own factor on those ages
 * @param stageSd the same of each stage's own length
 * @param rate how development depends on temperature
 * @param generalRate how it does where that form has none at the reference temperature
 */
@SuppressWarnings("ArrayRecordComponent") // Made once, never changed, never compared.
record Belief(
        PriorSource source,
        double[] medianWarmDays,
        double batchSd,
        double stageSd,
        RateForm rate,
        RateForm generalRate) {
    /** Error of the length of each stage by itself, as a keeper believes it (assumption). */
    private static final double STAGE_SD = 0.05;

    /** Log odds of never hatching, and of never leaving a later stage alive and waiting (assumptions). */
    private static final double NEVER_HATCHING = -3.2;

    private static final double NEVER_MOULTING = -6.5;
    private static final double NEVER_SHARED_SD = 0.3;
    private static final double NEVER_HATCHING_OWN_SD = 0.95;
    private static final double NEVER_MOULTING_OWN_SD = 1.2;
    private static final double TRAY_SD = 0.025;

    /** So wide that a completed brood's own evidence decides. */
    private static final double VAGUE_SD = 0.5;

    /** The keeper's belief of a brood; without one, what is assumed of its species. */
    static Belief of(Brood brood, List<Stage> boundaries, AssumedTimings assumed) {
        RateForm generalRate = assumed.general().timing().rate();
        Map<Stage, Double> proportions = assumed.general().timing().medianWarmDays();
        AssumedTiming ofTaxon = assumed.of(brood.taxon());
        return brood.timing()
                .filter(timing -> !timing.medianWarmDays().isEmpty())
                .map(timing -> new Belief(
                        PriorSource.FOLDER,
                        medians(timing, boundaries, proportions),
                        timing.batchSd(),
                        STAGE_SD,
                        timing.rate(),
                        generalRate))
                .orElseGet(() -> new Belief(
                        ofTaxon.isGeneral() ? PriorSource.GENERAL : PriorSource.TAXON,
                        medians(ofTaxon.timing(), boundaries, proportions),
                        ofTaxon.timing().batchSd(),
                        ofTaxon.stageSd(),
                        brood.timing().map(Timing::rate).orElse(ofTaxon.timing().rate()),
                        generalRate));
    }

    /** Development per day, 1 at the reference temperature; where the believed form has none there, at any. */
    RateCurve rateCurve(double referenceCelsius) {
        return BelievedRate.of(rate, generalRate, referenceCelsius);
    }

    /**
     * The belief about broods of this kind.
     *
     * @param scaleSd standard uncertainty of the scale of all ages, such as that of the temperature
     * @param ageHalfWidthWarmDays all ages of the brood in question may be off by as much
     */
    StagePrior kind(double scaleSd, double ageHalfWidthWarmDays) {
        return prior(Math.hypot(batchSd, scaleSd), stageSd, BelievedSpread.of(lengthShares()), ageHalfWidthWarmDays);
    }

    /** A belief that leaves a completed brood's own evidence to speak. */
    StagePrior vague(double ageHalfWidthWarmDays) {
        return prior(VAGUE_SD, VAGUE_SD, BelievedSpread.vague(lengthShares()), ageHalfWidthWarmDays);
    }

    private StagePrior prior(double commonSd, double stageSd, NormalBelief logSpread, double ageHalfWidthWarmDays) {
        int size = medianWarmDays.length;
        return new StagePrior(
                new NormalBelief(
                        Arrays.stream(medianWarmDays).map(Math::log).toArray(),
                        KindLearner.between(commonSd, stageSd, lengthShares())),
                logSpread,
                never(size),
                TRAY_SD,
                ageHalfWidthWarmDays);
    }

    private static NormalBelief never(int size) {
        NormalBelief moulting = NormalBelief.alike(size, NEVER_MOULTING, NEVER_SHARED_SD, NEVER_MOULTING_OWN_SD);
        double[] logits = moulting.mean().clone();
        double[][] covariance = moulting.covariance();
        logits[0] = NEVER_HATCHING;
        covariance[0][0] = NEVER_SHARED_SD * NEVER_SHARED_SD + NEVER_HATCHING_OWN_SD * NEVER_HATCHING_OWN_SD;
        return new NormalBelief(logits, covariance);
    }

    /** The share of each stage's length in the age at each boundary. */
    double[][] lengthShares() {
        int size = medianWarmDays.length;
        double[][] shares = new double[size][size];
        for (int k = 0; k < size; k++) {
            for (int m = 0; m <= k; m++) {
                double length = medianWarmDays[m] - (m == 0 ? 0 : medianWarmDays[m - 1]);
                shares[k][m] = length / medianWarmDays[k];
            }
        }
        return shares;
    }

    /** The medians given; one not given keeps the general proportion to its nearest neighbours. */
    private static double[] medians(Timing timing, List<Stage> boundaries, Map<Stage, Double> proportions) {
        EnumMap<Stage, Double> given = new EnumMap<>(Stage.class);
        given.putAll(timing.medianWarmDays());
        given.keySet().retainAll(proportions.keySet());
        return boundaries.stream()
                .mapToDouble(stage ->
                        Objects.requireNonNullElseGet(given.get(stage), () -> between(given, stage, proportions)))
                .toArray();
    }

    private static double between(EnumMap<Stage, Double> given, Stage stage, Map<Stage, Double> proportions) {
        double generalBelow = 0;
        double below = 0;
        double scale = 1;
        for (Map.Entry<Stage, Double> entry : given.entrySet()) {
            double general = proportions.getOrDefault(entry.getKey(), 0.0);
            scale = (entry.getValue() - below) / (general - generalBelow);
            if (entry.getKey().isAtLeast(stage)) {
                break;
            }
            below = entry.getValue();
            generalBelow = general;
        }
        return below + (proportions.getOrDefault(stage, 0.0) - generalBelow) * scale;
    }
}
