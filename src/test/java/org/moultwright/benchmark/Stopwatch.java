package org.moultwright.benchmark;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Times of the same work done several times over, in seconds. */
final class Stopwatch {
    private final List<Double> seconds = new ArrayList<>();

    void time(Runnable work) {
        long start = System.nanoTime();
        work.run();
        add((System.nanoTime() - start) / 1e9);
    }

    void add(double measuredSeconds) {
        seconds.add(measuredSeconds);
    }

    double median() {
        List<Double> sorted = new ArrayList<>(seconds);
        Collections.sort(sorted);
        int middle = sorted.size() / 2;
        return sorted.size() % 2 == 1 ? sorted.get(middle) : (sorted.get(middle - 1) + sorted.get(middle)) / 2;
    }

    double shortest() {
        return Collections.min(seconds);
    }

    double longest() {
        return Collections.max(seconds);
    }
}
