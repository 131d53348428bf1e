package org.moultwright.compute.psychro;

import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * Whether a wall wets, and how sure that is.
 *
 * @param aboveDewPointCelsius the wall less the air's dew point, in K
 * @param sdCelsius standard uncertainty of that
 * @param state what may be said of the wall
 */
public record CondensationRisk(double aboveDewPointCelsius, double sdCelsius, WallState state) {

    /**
     * The risk at a wall, all uncertainties being independent and standard ones.
     *
     * @param airSdCelsius of the air's temperature
     * @param humiditySdPercent of the air's humidity
     * @param wallSdCelsius of the wall's temperature
     */
    public static CondensationRisk of(
            MoistAir air, double airSdCelsius, double humiditySdPercent, double wallCelsius, double wallSdCelsius) {
        double sd = Math.hypot(air.dewPointSdCelsius(airSdCelsius, humiditySdPercent), wallSdCelsius);
        return new CondensationRisk(wallCelsius - air.dewPointCelsius(), sd, air.wall(wallCelsius, sd));
    }

    /** The chance that the wall is at or below the dew point, its error being normal. */
    public double chanceOfWater() {
        if (sdCelsius == 0) {
            return aboveDewPointCelsius <= 0 ? 1 : 0;
        }
        return NormalDistribution.of(0, sdCelsius).cumulativeProbability(-aboveDewPointCelsius);
    }
}
