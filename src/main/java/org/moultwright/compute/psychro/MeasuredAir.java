package org.moultwright.compute.psychro;

import java.util.Optional;
import org.moultwright.domain.ColdestWall;
import org.moultwright.domain.Correction;

/**
 * Air as a probe measured it, with its uncertainty.
 *
 * @param celsius its temperature, corrected
 * @param sdCelsius standard uncertainty of that
 * @param humidityPercent its relative humidity, corrected, above 0 and at most 100
 * @param humiditySdPercent standard uncertainty of that
 */
public record MeasuredAir(double celsius, double sdCelsius, double humidityPercent, double humiditySdPercent) {
    /** Of a probe nobody calibrated or placed: an assumption of ours. */
    public static final double UNTRIED_SD_CELSIUS = 0.5;

    /** Of a humidity probe nobody calibrated: an assumption of ours, near what sheets of cheap probes say. */
    public static final double UNTRIED_HUMIDITY_SD_PERCENT = 3;

    /** The temperature of a wall, and its standard uncertainty. */
    public record Wall(double celsius, double sdCelsius) {}

    /**
     * Air whose temperature is known, and its humidity as indicated; empty where that says nothing.
     *
     * @param indicatedPercent NaN where it was not measured
     * @param humidity what is known of the humidity probe's error, empty where nobody calibrated it
     */
    public static Optional<MeasuredAir> of(
            double celsius, double sdCelsius, double indicatedPercent, Optional<Correction> humidity) {
        double percent =
                humidity.map(correction -> correction.correct(indicatedPercent)).orElse(indicatedPercent);
        return Double.isNaN(percent) || percent <= 0
                ? Optional.empty()
                : Optional.of(new MeasuredAir(
                        celsius,
                        sdCelsius,
                        Math.min(percent, 100),
                        humidity.map(correction -> correction.sdAt(indicatedPercent))
                                .orElse(UNTRIED_HUMIDITY_SD_PERCENT)));
    }

    public MoistAir air() {
        return MoistAir.of(celsius, humidityPercent);
    }

    /**
     * The coldest wall around this air, as the keeper says it is; empty where its probe is silent.
     *
     * @param measured by the probe that lies on it, where it was heard lately
     */
    public Optional<Wall> wall(ColdestWall said, Optional<Wall> measured) {
        return said.probe().isPresent()
                ? measured
                : Optional.of(new Wall(celsius - said.belowAirCelsius(), said.sdCelsius()));
    }

    /** Whether this air's water settles on a wall, and how sure that is. */
    public CondensationRisk risk(Wall wall) {
        return CondensationRisk.of(air(), sdCelsius, humiditySdPercent, wall.celsius(), wall.sdCelsius());
    }
}
