package org.moultwright.compute.stage;

/**
 * 1 − Φ(z) from a table and three terms of its Taylor series, for the many evaluations of a likelihood.
 *
 * <p>Its relative error is below 1e-7; beyond the table the exact value is taken.
 */
final class QuickTail {
    private static final double FROM = -8;
    /** Where the table ends. */
    static final double TO = 8;

    private static final int NODES_PER_UNIT = 128;
    private static final double[] SURVIVAL = new double[(int) ((TO - FROM) * NODES_PER_UNIT) + 1];
    private static final double[] DENSITY = new double[SURVIVAL.length];

    static {
        for (int i = 0; i < SURVIVAL.length; i++) {
            double z = FROM + (double) i / NODES_PER_UNIT;
            SURVIVAL[i] = NormalTails.survival(z);
            DENSITY[i] = Math.exp(-z * z / 2) / Math.sqrt(2 * Math.PI);
        }
    }

    private QuickTail() {}

    /** The normal density, its relative error below 1e-6 within the table. */
    static double density(double z) {
        if (!(z > FROM && z < TO)) {
            return Math.exp(-z * z / 2) / Math.sqrt(2 * Math.PI);
        }
        int node = (int) ((z - FROM) * NODES_PER_UNIT + 0.5);
        double centre = FROM + (double) node / NODES_PER_UNIT;
        double d = z - centre;
        double squares = centre * centre;
        return DENSITY[node] * (1 - d * (centre - d * ((squares - 1) / 2 - d * centre * (squares - 3) / 6)));
    }

    static double survival(double z) {
        if (z <= FROM) {
            return 1;
        }
        if (!(z < TO)) {
            return NormalTails.survival(z);
        }
        int node = (int) ((z - FROM) * NODES_PER_UNIT + 0.5);
        double centre = FROM + (double) node / NODES_PER_UNIT;
        double d = z - centre;
        return SURVIVAL[node] - DENSITY[node] * d * (1 - centre * d / 2 + (centre * centre - 1) * d * d / 6);
    }
}
