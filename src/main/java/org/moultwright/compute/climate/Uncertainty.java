package org.moultwright.compute.climate;

import org.moultwright.domain.ProbeStay;

/**
 * Standard uncertainties of a temperature by where it comes from, in K.
 *
 * <p>An incubator's own display, and so its set-point, may be off by a degree or more: common practice, no
 * source. The other figures are assumptions of the same sort.
 */
final class Uncertainty {
    private static final double SET_POINT_ALONE = 1.0;
    private static final double REFERENCE = 2.0;
    private static final double ASSUMED_PLACE = 1.0;
    private static final double LEAST_OF_A_GAP = 0.2;
    private static final double THERMOMETER = 0.5;
    private static final double MIDDLE_PER_RANGE = 0.15;

    private Uncertainty() {}

    static double ofProbe(ProbeStay stay, Place place) {
        return place.isAssumed() ? Math.hypot(stay.sdCelsius(), ASSUMED_PLACE) : stay.sdCelsius();
    }

    /**
     * Of the mean between a lowest and a highest: the thermometer's own, and that the mean of a day need not lie in
     * the middle; where anything between them is as likely, it is 0.29 of the range, of a daily course about half.
     */
    static double ofExtremes(double rangeKelvin, Place place) {
        double atKnownPlace = Math.hypot(THERMOMETER, MIDDLE_PER_RANGE * rangeKelvin);
        return place.isAssumed() ? Math.hypot(atKnownPlace, ASSUMED_PLACE) : atKnownPlace;
    }

    static double of(TemperatureSource source, Residuals residuals, Place place) {
        double atKnownPlace = LEAST_OF_A_GAP;
        if (source instanceof TemperatureSource.Habit) {
            atKnownPlace = Math.max(LEAST_OF_A_GAP, residuals.sdCelsius());
        } else if (source instanceof TemperatureSource.SetPointAlone) {
            atKnownPlace = SET_POINT_ALONE;
        } else if (source instanceof TemperatureSource.Reference) {
            return REFERENCE;
        }
        return place.isAssumed() ? Math.hypot(atKnownPlace, ASSUMED_PLACE) : atKnownPlace;
    }
}
