package org.moultwright.compute.calibration;

import org.moultwright.domain.Require;

/**
 * The humidity of air over a saturated salt solution, by OIML R 121:1996, table 1.
 *
 * <p>Between the table's 20, 25 and 30 °C the value is interpolated. Its printed uncertainties are taken as
 * two standard uncertainties. Other tables differ: over KCl at 25 °C that of Greenspan 1977 says 84.3 %.
 */
public enum SaturatedSalt {
    /** At 20 °C the table gives the range 11.1 to 12.6. */
    LITHIUM_CHLORIDE("LiCl", 12, 11.3, 11.3, 0.9, 0.3, 0.3),
    MAGNESIUM_CHLORIDE("MgCl2", 33.1, 32.8, 32.4, 0.2, 0.2, 0.2),
    POTASSIUM_CARBONATE("K2CO3", 43.2, 43.2, 43.2, 0.4, 0.4, 0.5),
    SODIUM_CHLORIDE("NaCl", 75.5, 75.3, 75.1, 0.2, 0.2, 0.2),
    POTASSIUM_CHLORIDE("KCl", 85.1, 84.2, 83.6, 0.3, 0.3, 0.3),
    POTASSIUM_SULPHATE("K2SO4", 97.6, 97.3, 97.0, 0.6, 0.5, 0.4);

    /** What the table is called in a calibration that used it. */
    public static final String TABLE = "OIML R 121:1996";

    private static final double COVERAGE = 2;

    private final String formula;
    private final double percentAt20;
    private final double percentAt25;
    private final double percentAt30;
    private final double expandedAt20;
    private final double expandedAt25;
    private final double expandedAt30;

    SaturatedSalt(
            String formula,
            double percentAt20,
            double percentAt25,
            double percentAt30,
            double expandedAt20,
            double expandedAt25,
            double expandedAt30) {
        this.formula = formula;
        this.percentAt20 = percentAt20;
        this.percentAt25 = percentAt25;
        this.percentAt30 = percentAt30;
        this.expandedAt20 = expandedAt20;
        this.expandedAt25 = expandedAt25;
        this.expandedAt30 = expandedAt30;
    }

    public String formula() {
        return formula;
    }

    /** Relative humidity in % over the solution, at 20 to 30 °C. */
    public double humidityPercent(double celsius) {
        return between(celsius, percentAt20, percentAt25, percentAt30);
    }

    /** Standard uncertainty of it in %. */
    public double sdPercent(double celsius) {
        return between(celsius, expandedAt20, expandedAt25, expandedAt30) / COVERAGE;
    }

    private static double between(double celsius, double at20, double at25, double at30) {
        Require.within("celsius", celsius, 20, 30);
        return celsius < 25 ? at20 + (at25 - at20) * (celsius - 20) / 5 : at25 + (at30 - at25) * (celsius - 25) / 5;
    }
}
