package org.moultwright.compute.alarm;

/**
 * Notices that a probe says the same again and again, to the last digit of temperature and humidity.
 *
 * @param unchangedMillis for how long; gaps do not count
 */
public record StuckSense(double lastCelsius, double lastHumidityPercent, long unchangedMillis) {
    static final StuckSense START = new StuckSense(Double.NaN, Double.NaN, 0);

    /**
     * @param apartMillis since the last sample
     */
    StuckSense after(Observation.Sample sample, long apartMillis, long longestGapMillis) {
        double celsius = sample.indicatedCelsius();
        double percent = sample.indicatedHumidityPercent();
        boolean isSame = Double.compare(celsius, lastCelsius) == 0 && Double.compare(percent, lastHumidityPercent) == 0;
        long counted = apartMillis <= longestGapMillis ? apartMillis : 0;
        return new StuckSense(celsius, percent, isSame ? unchangedMillis + counted : 0);
    }
}
