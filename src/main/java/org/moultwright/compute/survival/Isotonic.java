package org.moultwright.compute.survival;

import java.util.Arrays;
import org.moultwright.domain.Require;

/** The closest sequence that never falls: least squares by pooling adjacent violators (Ayer et al. 1955). */
public final class Isotonic {
    private Isotonic() {}

    /** The closest never-falling sequence, each value counting the same. */
    public static double[] increasing(double[] values) {
        double[] equal = new double[values.length];
        Arrays.fill(equal, 1);
        return increasing(values, equal);
    }

    /** The closest never-falling sequence under weights above 0. */
    public static double[] increasing(double[] values, double[] weights) {
        Require.that(
                values.length == weights.length, "weights holds " + weights.length + " but must hold " + values.length);
        double[] blockMean = new double[values.length];
        double[] blockWeight = new double[values.length];
        int[] blockEnd = new int[values.length];
        int blocks = 0;
        for (int i = 0; i < values.length; i++) {
            blockMean[blocks] = values[i];
            blockWeight[blocks] = weights[i];
            blockEnd[blocks] = i + 1;
            blocks++;
            while (blocks > 1 && blockMean[blocks - 2] > blockMean[blocks - 1]) {
                double weight = blockWeight[blocks - 2] + blockWeight[blocks - 1];
                blockMean[blocks - 2] = (blockMean[blocks - 2] * blockWeight[blocks - 2]
                                + blockMean[blocks - 1] * blockWeight[blocks - 1])
                        / weight;
                blockWeight[blocks - 2] = weight;
                blockEnd[blocks - 2] = blockEnd[blocks - 1];
                blocks--;
            }
        }
        double[] pooled = new double[values.length];
        int start = 0;
        for (int block = 0; block < blocks; block++) {
            Arrays.fill(pooled, start, blockEnd[block], blockMean[block]);
            start = blockEnd[block];
        }
        return pooled;
    }
}
