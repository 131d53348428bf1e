package org.moultwright.compute.rate;

/** A rate curve looked up in a table. Immutable. */
final class TabulatedRate implements RateCurve {
    private static final double FROM_CELSIUS = 0;
    private static final double TO_CELSIUS = 45;
    private static final double NODES_PER_KELVIN = 100;

    private final RateCurve exact;
    private final double[] rates = new double[(int) ((TO_CELSIUS - FROM_CELSIUS) * NODES_PER_KELVIN) + 2];

    TabulatedRate(RateCurve exact) {
        this.exact = exact;
        for (int i = 0; i < rates.length; i++) {
            rates[i] = exact.at(FROM_CELSIUS + i / NODES_PER_KELVIN);
        }
    }

    @Override
    public double at(double temperatureCelsius) {
        if (!(temperatureCelsius >= FROM_CELSIUS && temperatureCelsius < TO_CELSIUS)) {
            return exact.at(temperatureCelsius);
        }
        double place = (temperatureCelsius - FROM_CELSIUS) * NODES_PER_KELVIN;
        int node = (int) place;
        return rates[node] + (place - node) * (rates[node + 1] - rates[node]);
    }
}
