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
 * @param rate how development depends on temperature
 */
@SuppressWarnings("ArrayRecordComponent") // Made once, never changed, never compared.
record Belief(PriorSource source, double[] medianWarmDays, double batchSd, RateForm rate) {
    /**
     * The general default at 27 °C: about 3–4 weeks to eggs with legs, 2–3 more to nymphs, 3–4 more to
     * slings, the dark patch about 5 days before the moult. Common practice, no source.
     */
    private static final Map<Stage, Double> GENERAL = Map.of(
            Stage.POSTEMBRYO, 24.0,
            Stage.INSTAR1, 41.0,
            Stage.DARKENED, 61.0,
            Stage.INSTAR2, 66.0);

    private static final double GENERAL_BATCH_SD = 0.22;

    /** Error of the length of each stage by itself, as a keeper believes it, and as the default has it (assumptions). */
    private static final double STAGE_SD = 0.07;

    private static final double GENERAL_STAGE_SD = 0.20;

    /** Log odds of never hatching, and of never leaving a later stage alive and waiting (assumptions). */
    private static final double NEVER_HATCHING = -3.2;

    private static final double NEVER_MOULTING = -4.8;
    private static final double NEVER_SHARED_SD = 0.3;
    private static final double NEVER_HATCHING_OWN_SD = 0.95;
    private static final double NEVER_MOULTING_OWN_SD = 0.6;
    private static final double TRAY_SD = 0.025;

    /** So wide that a completed brood's own evidence decides. */
    private static final double VAGUE_SD = 0.5;

    static Belief of(Brood brood, List<Stage> boundaries) {
        return brood.timing()
                .filter(timing -> !timing.medianWarmDays().isEmpty())
                .map(timing ->
                        new Belief(PriorSource.FOLDER, medians(timing, boundaries), timing.batchSd(), timing.rate()))
                .orElseGet(() -> new Belief(
                        PriorSource.GENERAL,
                        boundaries.stream().mapToDouble(Belief::general).toArray(),
                        GENERAL_BATCH_SD,
                        brood.timing().map(Timing::rate).orElse(BelievedRate.GENERAL)));
    }

    /** Development per day, 1 at the reference temperature; where the believed form has none there, at any. */
    RateCurve rateCurve(double referenceCelsius) {
        return BelievedRate.of(rate, referenceCelsius);
    }

    /**
     * The belief about broods of this kind.
     *
     * @param scaleSd standard uncertainty of the scale of all ages, such as that of the temperature
     * @param ageHalfWidthWarmDays all ages of the brood in question may be off by as much
     */
    StagePrior kind(double scaleSd, double ageHalfWidthWarmDays) {
        double stageSd = source == PriorSource.GENERAL ? GENERAL_STAGE_SD : STAGE_SD;
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

    /** The keeper's medians; one not given keeps the general proportion to its nearest neighbours. */
    private static double[] medians(Timing timing, List<Stage> boundaries) {
        EnumMap<Stage, Double> given = new EnumMap<>(timing.medianWarmDays());
        given.keySet().retainAll(GENERAL.keySet());
        return boundaries.stream()
                .mapToDouble(stage -> Objects.requireNonNullElseGet(given.get(stage), () -> between(given, stage)))
                .toArray();
    }

    private static double general(Stage stage) {
        return Objects.requireNonNull(GENERAL.get(stage));
    }

    private static double between(EnumMap<Stage, Double> given, Stage stage) {
        double generalBelow = 0;
        double below = 0;
        double scale = 1;
        for (Map.Entry<Stage, Double> entry : given.entrySet()) {
            double general = general(entry.getKey());
            scale = (entry.getValue() - below) / (general - generalBelow);
            if (entry.getKey().isAtLeast(stage)) {
                break;
            }
            below = entry.getValue();
            generalBelow = general;
        }
        return below + (general(stage) - generalBelow) * scale;
    }
}
