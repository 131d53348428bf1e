package org.moultwright.device.profile;

import java.util.function.DoubleUnaryOperator;

/** The temperature of a sensor that is told by what an instrument measures at it, to a thousandth of a degree. */
final class SensorCurve {
    private static final double KELVIN_OF_ICE = 273.15;
    private static final double PER_KELVIN = 1000;
    private static final int HALVINGS = 60;

    /** A little beyond what is told, so that its ends are told too. */
    private static final double FARTHEST_CELSIUS = 201;

    /** IEC 60751:2008. */
    private static final double ICE_OHM = 100;

    private static final double PT_A = 3.9083e-3;
    private static final double PT_B = -5.775e-7;
    private static final double PT_C = -4.183e-12;

    /** Of a thermistor of 10 kOhm at 25 °C, after its instrument's manual. */
    private static final double NTC_A = 1.129241e-3;

    private static final double NTC_B = 2.341077e-4;
    private static final double NTC_C = 8.775468e-8;

    /** ITS-90, type K, from 0 °C on: NIST monograph 175. */
    private static final double[] K_WARM = {
        -0.176004136860e-1,
        0.389212049750e-1,
        0.185587700320e-4,
        -0.994575928740e-7,
        0.318409457190e-9,
        -0.560728448890e-12,
        0.560750590590e-15,
        -0.320207200030e-18,
        0.971511471520e-22,
        -0.121047212750e-25
    };

    /** The same below 0 °C. */
    private static final double[] K_COLD = {
        0,
        0.394501280250e-1,
        0.236223735980e-4,
        -0.328589067840e-6,
        -0.499048287770e-8,
        -0.675090591730e-10,
        -0.574103274280e-12,
        -0.310888728940e-14,
        -0.104516093650e-16,
        -0.198892668780e-19,
        -0.163226974860e-22
    };

    private SensorCurve() {}

    /** Of a Pt100, within -200 and 200 °C. */
    static double platinumCelsius(double ohm) {
        return inverse(SensorCurve::platinumOhm, ohm);
    }

    /** Of a thermistor of 10 kOhm at 25 °C, by Steinhart and Hart. */
    static double thermistorCelsius(double ohm) {
        if (ohm <= 0) {
            return Double.NaN;
        }
        double log = Math.log(ohm);
        return rounded(1 / (NTC_A + NTC_B * log + NTC_C * log * log * log) - KELVIN_OF_ICE);
    }

    /** Of a thermocouple of type K whose other end is at 0 °C, or made to seem so, within -200 and 200 °C. */
    static double typeKCelsius(double millivolt) {
        return inverse(SensorCurve::typeKMillivolt, millivolt);
    }

    private static double platinumOhm(double celsius) {
        double square = celsius * celsius;
        double cold = celsius < 0 ? PT_C * (celsius - 100) * square * celsius : 0;
        return ICE_OHM * (1 + PT_A * celsius + PT_B * square + cold);
    }

    private static double typeKMillivolt(double celsius) {
        double[] terms = celsius < 0 ? K_COLD : K_WARM;
        double sum = 0;
        for (int i = terms.length - 1; i >= 0; i--) {
            sum = sum * celsius + terms[i];
        }
        double bump = celsius < 0 ? 0 : 0.1185976 * Math.exp(-0.1183432e-3 * Math.pow(celsius - 126.9686, 2));
        return sum + bump;
    }

    /** Where a rising curve has a value; not a number where it has it nowhere. */
    private static double inverse(DoubleUnaryOperator rising, double value) {
        double low = -FARTHEST_CELSIUS;
        double high = FARTHEST_CELSIUS;
        if (!(value >= rising.applyAsDouble(low) && value <= rising.applyAsDouble(high))) {
            return Double.NaN;
        }
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (rising.applyAsDouble(middle) < value) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return rounded((low + high) / 2);
    }

    private static double rounded(double celsius) {
        return Double.isFinite(celsius) ? Math.round(celsius * PER_KELVIN) / PER_KELVIN : Double.NaN;
    }
}
