package org.moultwright.domain;

import java.util.Optional;

/** How a probe was calibrated: against what, and at how many points. */
public enum CalibrationMethod implements Keyed {
    /** In melting ice: one point, so that its slope stays unknown. */
    ICE_POINT("ice point", Quantity.TEMPERATURE, 1, 1),
    /** At two temperatures of a thermometer that is believed. */
    TWO_POINTS("two points", Quantity.TEMPERATURE, 2, 2),
    /** At three or more temperatures of a thermometer that is believed. */
    LEAST_SQUARES("least squares", Quantity.TEMPERATURE, 3, Integer.MAX_VALUE),
    /** Over saturated salt solutions. */
    SATURATED_SALTS("saturated salts", Quantity.HUMIDITY, 1, Integer.MAX_VALUE);

    private final String key;
    private final Quantity quantity;
    private final int fewestPoints;
    private final int mostPoints;

    CalibrationMethod(String key, Quantity quantity, int fewestPoints, int mostPoints) {
        this.key = key;
        this.quantity = quantity;
        this.fewestPoints = fewestPoints;
        this.mostPoints = mostPoints;
    }

    @Override
    public String key() {
        return key;
    }

    public Quantity quantity() {
        return quantity;
    }

    /** Whether this method works with so many points. */
    public boolean takes(int points) {
        return points >= fewestPoints && points <= mostPoints;
    }

    public static Optional<CalibrationMethod> fromKey(String key) {
        return Keyed.find(values(), key);
    }
}
