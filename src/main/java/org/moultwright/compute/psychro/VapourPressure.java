package org.moultwright.compute.psychro;

/**
 * Saturation vapour pressure by one of two published fits, and its inverse. Air's own enhancement of it,
 * under half a percent, is left out.
 */
public enum VapourPressure {
    /** Sonntag 1990 over water: the one the workbench uses. */
    SONNTAG_1990 {
        @Override
        public double saturationHectopascal(double celsius) {
            double kelvin = celsius + ZERO_CELSIUS_KELVIN;
            return Math.exp(-6096.9385 / kelvin
                    + 16.635794
                    - 2.711193e-2 * kelvin
                    + 1.673952e-5 * kelvin * kelvin
                    + 2.433502 * Math.log(kelvin));
        }

        @Override
        public double dewPointCelsius(double hectopascal) {
            double celsius = WMO_8.dewPointCelsius(hectopascal);
            double step;
            do {
                step = (hectopascal - saturationHectopascal(celsius)) / slopeHectopascalPerKelvin(celsius);
                celsius += step;
            } while (Math.abs(step) > CLOSE_CELSIUS);
            return celsius;
        }
    },

    /** The WMO Guide No. 8 formula 6.112 exp(17.62 t/(243.12 + t)), which inverts in closed form. */
    WMO_8 {
        @Override
        public double saturationHectopascal(double celsius) {
            return 6.112 * Math.exp(17.62 * celsius / (243.12 + celsius));
        }

        @Override
        public double dewPointCelsius(double hectopascal) {
            double logarithm = Math.log(hectopascal / 6.112);
            return 243.12 * logarithm / (17.62 - logarithm);
        }
    };

    static final double ZERO_CELSIUS_KELVIN = 273.15;
    private static final double SLOPE_STEP = 1e-3;
    private static final double CLOSE_CELSIUS = 1e-10;

    /** The pressure of vapour over water at rest with it, in hPa. */
    public abstract double saturationHectopascal(double celsius);

    /** The temperature in °C at which a vapour pressure is the saturated one. */
    public abstract double dewPointCelsius(double hectopascal);

    /** How fast the saturated pressure rises with temperature. */
    double slopeHectopascalPerKelvin(double celsius) {
        return (saturationHectopascal(celsius + SLOPE_STEP) - saturationHectopascal(celsius - SLOPE_STEP))
                / (2 * SLOPE_STEP);
    }
}
