package org.moultwright.compute.calibration;

import org.moultwright.domain.Require;

/**
 * The straight line through points by least squares, with the uncertainty of what it says (JCGM 100:2008,
 * H.3): {@code y = intercept + slope · (x − origin)}.
 *
 * @param residualSd standard deviation of the points about the line, n − 2 degrees of freedom
 * @param points how many points it goes through
 */
record StraightLine(
        double origin,
        double intercept,
        double slope,
        double interceptVariance,
        double slopeVariance,
        double covariance,
        double residualSd,
        int points) {

    /**
     * The line through three or more points.
     *
     * @param leastResidualSd the scatter is believed to be at least this
     * @throws IllegalArgumentException if there are fewer than three points or all have one x
     */
    static StraightLine through(double[] x, double[] y, double origin, double leastResidualSd) {
        int n = x.length;
        Require.that(n == y.length && n >= 3, "a line needs at least three points, but there are " + n);
        double meanX = mean(x);
        double meanY = mean(y);
        double xx = 0;
        double xy = 0;
        for (int i = 0; i < n; i++) {
            xx += (x[i] - meanX) * (x[i] - meanX);
            xy += (x[i] - meanX) * (y[i] - meanY);
        }
        Require.that(xx > 0, "all points have one indication; take them further apart");
        double slope = xy / xx;
        double squares = 0;
        for (int i = 0; i < n; i++) {
            double residual = y[i] - meanY - slope * (x[i] - meanX);
            squares += residual * residual;
        }
        double residualSd = Math.max(Math.sqrt(squares / (n - 2)), leastResidualSd);
        double variance = residualSd * residualSd;
        double away = origin - meanX;
        return new StraightLine(
                origin,
                meanY + slope * away,
                slope,
                variance * (1.0 / n + away * away / xx),
                variance / xx,
                variance * away / xx,
                residualSd,
                n);
    }

    double correlation() {
        return covariance / Math.sqrt(interceptVariance * slopeVariance);
    }

    private static double mean(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum / values.length;
    }
}
