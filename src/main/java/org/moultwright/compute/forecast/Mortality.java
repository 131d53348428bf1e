package org.moultwright.compute.forecast;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.moultwright.compute.stage.Chance;
import org.moultwright.compute.stage.StageParameters;
import org.moultwright.compute.stage.TrayHistory;
import org.moultwright.domain.Account;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.Stage;

/**
 * How likely an animal is to live on: a hazard per warm-day in each stage, times the brood's own frailty.
 *
 * <p>Frailty is gamma-distributed, sharpened by the brood's dead (missing ones among them) against those
 * the hazards lead one to expect. Infertile eggs taken out are no deaths: that some never pass is the
 * passing model's.
 */
final class Mortality {
    /** Deaths per animal and warm-day in the egg, after it, and later (assumption). */
    private static final Map<Stage, Double> HAZARDS = Map.of(
            Stage.EGG, 0.006,
            Stage.POSTEMBRYO, 0.004,
            Stage.INSTAR1, 0.003,
            Stage.DARKENED, 0.003,
            Stage.INSTAR2, 0.003);

    private static final double FRAILTY_SHAPE = 4;

    private final List<Stage> stages;
    private final double[] hazards;
    private final double shape;
    private final double rate;

    private Mortality(List<Stage> stages, double[] hazards, double shape, double rate) {
        this.stages = stages;
        this.hazards = hazards;
        this.shape = shape;
        this.rate = rate;
    }

    static Mortality of(BroodRecord record, List<TrayHistory> trays, List<Stage> boundaries) {
        Losses losses = Losses.of(record, trays);
        List<Stage> stages = new ArrayList<>(List.of(Stage.EGG));
        stages.addAll(boundaries);
        double expected = 0;
        for (Map.Entry<Stage, Double> exposure : losses.animalWarmDays().entrySet()) {
            expected += exposure.getValue() * hazard(exposure.getKey());
        }
        return new Mortality(
                stages,
                stages.stream().mapToDouble(Mortality::hazard).toArray(),
                FRAILTY_SHAPE + losses.dead(),
                FRAILTY_SHAPE + expected);
    }

    private static double hazard(Stage stage) {
        return Objects.requireNonNull(HAZARDS.get(stage));
    }

    /** A possible frailty of this brood. */
    double frailty(Chance chance) {
        return chance.gamma(shape) / rate;
    }

    /** The chance of an animal to live from one age to another, stages lasting as their medians say. */
    double survival(double fromAge, double toAge, StageParameters parameters, double frailty) {
        double hazard = 0;
        double start = 0;
        for (int cell = 0; cell < stages.size(); cell++) {
            double end = cell < parameters.logMedian().length
                    ? Math.max(start, Math.exp(parameters.logMedian()[cell]))
                    : Double.POSITIVE_INFINITY;
            hazard += hazards[cell] * Math.max(0, Math.min(end, toAge) - Math.max(start, fromAge));
            start = end;
        }
        return Math.exp(-frailty * hazard);
    }

    /** Dead of a brood, and the animal-warm-days they were lost from. */
    private record Losses(double dead, Map<Stage, Double> animalWarmDays) {
        static Losses of(BroodRecord record, List<TrayHistory> trays) {
            double dead = record.ledger().standing().stream()
                    .filter(entry -> entry.from().isTray())
                    .filter(entry ->
                            entry.to().equals(Account.DEAD) || entry.to().equals(Account.MISSING))
                    .mapToDouble(entry -> entry.count())
                    .sum();
            Map<Stage, Double> exposure = new EnumMap<>(Stage.class);
            trays.forEach(tray ->
                    tray.exposures().forEach(span -> exposure.merge(span.stage(), span.animalWarmDays(), Double::sum)));
            return new Losses(dead, exposure);
        }
    }
}
