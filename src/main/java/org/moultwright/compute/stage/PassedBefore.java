package org.moultwright.compute.stage;

import java.util.List;
import java.util.stream.DoubleStream;

/**
 * When one tray's animals passed the boundary before another, in a few groups: those that passed between two looks,
 * and last those that wait there. Immutable.
 */
public final class PassedBefore {
    /** Groups are told apart at about these shares: finely among the late, who make the dates of the last. */
    private static final double[] CUTS = {0.1, 0.3, 0.5, 0.7, 0.85, 0.93};

    private final LoggedAge[] edges;
    private final double[] animals;

    private PassedBefore(double[] edges, double[] animals) {
        this.edges = DoubleStream.of(edges).mapToObj(LoggedAge::of).toArray(LoggedAge[]::new);
        this.animals = animals;
    }

    /** The groups of what was seen of the boundary before. */
    public static PassedBefore of(BoundaryEvidence before) {
        List<PassingState> states = before.states();
        double all = before.last().passed() + before.last().waiting();
        DoubleStream.Builder edges = DoubleStream.builder().add(states.get(0).age());
        DoubleStream.Builder animals = DoubleStream.builder();
        double grouped = 0;
        int cut = 0;
        for (int i = 1; i < states.size(); i++) {
            double passed = states.get(i).passed();
            boolean isNextSame = i + 1 < states.size()
                    && (cut == CUTS.length ? states.get(i + 1).passed() == passed : passed < CUTS[cut] * all);
            if (!isNextSame) {
                edges.add(states.get(i).age());
                animals.add(passed - grouped);
                grouped = passed;
                while (cut < CUTS.length && passed >= CUTS[cut] * all) {
                    cut++;
                }
            }
        }
        return new PassedBefore(edges.build().toArray(), animals.build().toArray());
    }

    /** How many have passed. */
    double passed() {
        return DoubleStream.of(animals).sum();
    }

    /** Groups of those that passed. */
    int size() {
        return animals.length;
    }

    /** How many animals a group has. */
    double animals(int group) {
        return animals[group];
    }

    /** The age from which on a group passed, and that by which the group before it had. */
    LoggedAge edge(int group) {
        return edges[group];
    }
}
