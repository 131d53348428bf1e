package org.moultwright.compute.stage;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/** Parameters drawn from a prior, and evidence drawn from the model under them: for calibrating the posterior. */
record InventedEvidence(StageParameters truth, List<TrayHistory> trays) {
    private static final double CORRELATION = 0.005;
    private static final double LOOK_EVERY_WARM_DAYS = 1.7;

    /** Share of the looks that only sample so many animals. */
    private static final double SAMPLES = 0.25;

    private static final int SAMPLED = 12;

    static InventedEvidence of(StagePrior prior, int trays, int animals, double untilAge, Chance chance) {
        StageCoordinates coordinates = new StageCoordinates(prior, trays);
        double[] point = new double[coordinates.dimension()];
        for (int i = 0; i < point.length; i++) {
            point[i] = chance.normal();
        }
        StageParameters truth = coordinates.parameters(point);
        List<TrayHistory> histories = IntStream.range(0, trays)
                .mapToObj(tray -> history(truth, tray, prior.size(), animals, untilAge, chance))
                .toList();
        return new InventedEvidence(truth, histories);
    }

    private static TrayHistory history(
            StageParameters truth, int tray, int boundaries, int animals, double untilAge, Chance chance) {
        List<BoundaryEvidence> evidence = IntStream.range(0, boundaries)
                .mapToObj(k -> evidence(truth.law(tray, k), animals, untilAge, chance))
                .toList();
        return new TrayHistory(
                "T" + tray,
                animals,
                animals,
                animals,
                evidence,
                Collections.nCopies(boundaries, 0.0),
                evidence.stream().map(seen -> seen.last().waiting()).toList(),
                List.of(),
                List.of());
    }

    private static BoundaryEvidence evidence(PassingLaw law, int animals, double untilAge, Chance chance) {
        List<PassingState> states = new ArrayList<>(List.of(new PassingState(0, 0, animals)));
        List<Sampled> samples = new ArrayList<>();
        int waiting = animals;
        double before = 0;
        for (double age = 20; age < untilAge; age += LOOK_EVERY_WARM_DAYS) {
            double share = PassingLaw.readAsPassed(law.passedIfWaitingAt(before, age));
            waiting -= chance.betaBinomial(waiting, share, CORRELATION);
            if (chance.uniform() < SAMPLES) {
                samples.add(Sampled.of(age, animals, animals - waiting, chance));
            } else {
                states.add(new PassingState(age, animals - waiting, waiting));
            }
            before = age;
        }
        return BoundaryEvidence.of(
                states,
                Collections.nCopies(states.size(), 0.0),
                (from, toAge, candidates) -> samples.stream()
                        .filter(sample -> candidates >= 1 && sample.age() > from.age() && sample.age() < toAge)
                        .map(sample -> sample.glimpse(from, (int) candidates, animals))
                        .toList(),
                OptionalDouble.empty());
    }

    /** How many of some animals picked out had passed. */
    private record Sampled(double age, int found) {
        static Sampled of(double age, int animals, int passed, Chance chance) {
            int found = 0;
            for (int picked = 0; picked < SAMPLED; picked++) {
                found += chance.below(animals - picked) < passed - found ? 1 : 0;
            }
            return new Sampled(age, found);
        }

        Glimpse glimpse(PassingState from, int candidates, int animals) {
            return Glimpse.sample(age, candidates, (int) from.passed(), animals, found, SAMPLED);
        }
    }
}
