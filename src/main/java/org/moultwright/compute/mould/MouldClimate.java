package org.moultwright.compute.mould;

import org.moultwright.domain.Require;

/**
 * What air of a constant temperature and humidity does for mould on pine, by the model of Hukka &amp;
 * Viitanen 1999 with the growth limits of Ojanen et al. 2010.
 *
 * <p>The model was fitted to building materials; eggshells and dead nymphs are richer. Its figures compare
 * one week with another and foretell no date.
 *
 * @param celsius air temperature in °C, above 0 and at most 50, the range of the model
 * @param humidityPercent relative humidity in %, above 0 and at most 100
 */
public record MouldClimate(double celsius, double humidityPercent) {
    private static final double LEVEL_ABOVE_CELSIUS = 20;

    public MouldClimate {
        Require.within("celsius", celsius, Double.MIN_NORMAL, 50);
        Require.within("humidityPercent", humidityPercent, Double.MIN_NORMAL, 100);
    }

    /** The relative humidity in % below which nothing grows at this temperature. */
    public double criticalHumidityPercent() {
        if (celsius > LEVEL_ABOVE_CELSIUS) {
            return 80;
        }
        return ((-0.00267 * celsius + 0.160) * celsius - 3.13) * celsius + 100;
    }

    /** The index growth would end at, 0 where nothing grows. */
    public double highestIndex() {
        double critical = criticalHumidityPercent();
        if (humidityPercent < critical) {
            return 0;
        }
        double excess = (critical - humidityPercent) / (critical - 100);
        return 1 + 7 * excess - 2 * excess * excess;
    }

    /** Growth of the index a day at an index already reached, 0 where nothing grows. */
    public double growthPerDay(double index) {
        if (index >= highestIndex()) {
            return 0;
        }
        double nearTheEnd = Math.max(1 - Math.exp(2.3 * (index - highestIndex())), 0);
        return growthFactor(index) * nearTheEnd / (7 * weeksToFirstGrowth());
    }

    /** Weeks to an index of 1, seen under a microscope. */
    double weeksToFirstGrowth() {
        return Math.exp(-0.68 * Math.log(celsius) - 13.9 * Math.log(humidityPercent) + 66.02);
    }

    /** Weeks to an index of 3, seen by eye. */
    double weeksToVisibleGrowth() {
        return Math.exp(-0.74 * Math.log(celsius) - 12.72 * Math.log(humidityPercent) + 61.50);
    }

    double growthFactor(double index) {
        return index < 1 ? 1 : 2 / (weeksToVisibleGrowth() / weeksToFirstGrowth() - 1);
    }
}
