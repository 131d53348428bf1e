package org.moultwright.device.profile;

import java.util.Arrays;
import java.util.Locale;
import org.moultwright.language.Texts;

/** The unit a quantity is told in. */
enum Unit {
    CELSIUS("C") {
        @Override
        double toOurs(double value) {
            return value;
        }
    },
    FAHRENHEIT("F") {
        @Override
        double toOurs(double value) {
            return (value - 32) / 1.8;
        }
    },
    PLATINUM_OHM("PT100") {
        @Override
        double toOurs(double value) {
            return SensorCurve.platinumCelsius(value);
        }
    },
    THERMISTOR_OHM("NTC10K") {
        @Override
        double toOurs(double value) {
            return SensorCurve.thermistorCelsius(value);
        }
    },
    TYPE_K_MILLIVOLT("TYPE-K") {
        @Override
        double toOurs(double value) {
            return SensorCurve.typeKCelsius(value);
        }
    },
    PERCENT("%") {
        @Override
        double toOurs(double value) {
            return value;
        }
    };

    private final String key;

    Unit(String key) {
        this.key = key;
    }

    /** The unit a line or a profile names, in letters of either case. */
    static Unit named(String key) {
        return Arrays.stream(values())
                .filter(unit -> unit.key.equals(key.toUpperCase(Locale.ROOT)))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(
                        Texts.say("unit is '{0}' but must be C, F, pt100, ntc10k, type-k or %", key)));
    }

    /** The quantity in °C or in %, infinite or not a number where there is none. */
    abstract double toOurs(double value);
}
