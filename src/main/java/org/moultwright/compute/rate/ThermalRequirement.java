package org.moultwright.compute.rate;

import java.util.List;
import org.moultwright.domain.Require;

/**
 * The straight line through development rates: below a threshold nothing, above it a fixed sum of warmth.
 *
 * @param lowerCelsius the threshold, where the line crosses zero
 * @param degreeDays degree-days above the threshold the stage needs
 * @param rSquared share of the rates' variance the line explains
 */
public record ThermalRequirement(double lowerCelsius, double degreeDays, double rSquared) {

    /**
     * Least squares of 1/days on temperature.
     *
     * @throws IllegalArgumentException if fewer than two different temperatures are given, or the rate does
     *     not rise with temperature
     */
    public static ThermalRequirement fit(List<DevelopmentTime> times) {
        double meanCelsius = mean(
                times.stream().mapToDouble(DevelopmentTime::temperatureCelsius).toArray());
        double meanRate =
                mean(times.stream().mapToDouble(time -> 1 / time.days()).toArray());
        double xx = 0;
        double xy = 0;
        double yy = 0;
        for (DevelopmentTime time : times) {
            double x = time.temperatureCelsius() - meanCelsius;
            double y = 1 / time.days() - meanRate;
            xx += x * x;
            xy += x * y;
            yy += y * y;
        }
        Require.that(xx > 0, "times holds fewer than two different temperatures");
        Require.that(xy > 0, "times show no rise of development with temperature");
        double slope = xy / xx;
        return new ThermalRequirement(meanCelsius - meanRate / slope, 1 / slope, xy * xy / (xx * yy));
    }

    private static double mean(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum / values.length;
    }
}
