package org.moultwright.compute.stage;

import java.util.List;

/** The log posterior density of a brood's parameters, in plain coordinates. */
final class StagePosterior {
    private final List<TrayHistory> trays;
    private final StageCoordinates coordinates;

    StagePosterior(List<TrayHistory> trays, StagePrior prior) {
        this.trays = trays;
        this.coordinates = new StageCoordinates(prior, trays.size());
    }

    StageCoordinates coordinates() {
        return coordinates;
    }

    List<TrayHistory> trays() {
        return trays;
    }

    double logDensity(double[] point) {
        double sum = 0;
        for (double coordinate : point) {
            sum -= 0.5 * coordinate * coordinate;
        }
        StageParameters parameters = coordinates.parameters(point);
        for (int j = 0; j < trays.size(); j++) {
            for (int k = 0; k < coordinates.boundaries(); k++) {
                sum += trays.get(j).evidence().get(k).logLikelihood(parameters.law(j, k));
            }
        }
        return Double.isNaN(sum) ? Double.NEGATIVE_INFINITY : sum;
    }
}
