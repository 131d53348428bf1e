package org.moultwright.domain;

/**
 * Between which temperatures broods are kept, and beyond which they come to harm.
 *
 * @param veryLowCelsius below it an alarm comes at once
 * @param lowCelsius below it an alarm comes once that lasts
 * @param highCelsius above it an alarm comes once that lasts
 * @param veryHighCelsius above it an alarm comes at once
 */
public record AlarmLimits(double veryLowCelsius, double lowCelsius, double highCelsius, double veryHighCelsius) {
    /** Common practice, no source. */
    public static final AlarmLimits USUAL = new AlarmLimits(20, 23, 29, 31);

    public AlarmLimits {
        Require.within("veryLowCelsius", veryLowCelsius, Reading.LOWEST_CELSIUS, Reading.HIGHEST_CELSIUS);
        Require.within("lowCelsius", lowCelsius, veryLowCelsius, Reading.HIGHEST_CELSIUS);
        Require.within("highCelsius", highCelsius, lowCelsius, Reading.HIGHEST_CELSIUS);
        Require.within("veryHighCelsius", veryHighCelsius, highCelsius, Reading.HIGHEST_CELSIUS);
    }

    /**
     * The limits of a container that is set to a temperature of its own: as far from that as these are from the
     * usual reference temperature. None of them rises above {@code veryHighCelsius}, for what kills does not move.
     *
     * @param setPointCelsius NaN where nobody knows it: then these limits hold
     */
    public AlarmLimits around(double setPointCelsius) {
        if (Double.isNaN(setPointCelsius)) {
            return this;
        }
        double by = setPointCelsius - Brood.DEFAULT_REFERENCE_CELSIUS;
        return new AlarmLimits(
                moved(veryLowCelsius, by), moved(lowCelsius, by), moved(highCelsius, by), moved(veryHighCelsius, by));
    }

    private double moved(double limitCelsius, double byCelsius) {
        return Math.max(Reading.LOWEST_CELSIUS, Math.min(limitCelsius + byCelsius, veryHighCelsius));
    }
}
