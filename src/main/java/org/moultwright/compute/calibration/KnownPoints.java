package org.moultwright.compute.calibration;

import java.util.Locale;
import org.moultwright.domain.CalibrationPoint;

/** Points whose true value nature gives. */
public final class KnownPoints {
    /**
     * How far off a bath of crushed ice and water in a vacuum flask may be when made at a kitchen table: an
     * assumption of ours; made with pure water and stirred it is ten times better.
     */
    public static final double HOME_ICE_SD_CELSIUS = 0.05;

    private KnownPoints() {}

    /** A probe in melting ice. */
    public static CalibrationPoint ice(double indicatedCelsius, double indicatedSd) {
        return new CalibrationPoint(0, HOME_ICE_SD_CELSIUS, indicatedCelsius, indicatedSd, "melting ice");
    }

    /**
     * A humidity probe over a saturated salt solution.
     *
     * @param celsius of the closed jar, within [20, 30]
     */
    public static CalibrationPoint salt(
            SaturatedSalt salt, double celsius, double indicatedPercent, double indicatedSd) {
        return new CalibrationPoint(
                salt.humidityPercent(celsius),
                salt.sdPercent(celsius),
                indicatedPercent,
                indicatedSd,
                String.format(Locale.ROOT, "%s, %s at %.1f °C", SaturatedSalt.TABLE, salt.formula(), celsius));
    }
}
