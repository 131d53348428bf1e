package org.moultwright.device.profile;

/** The unit a temperature is told in. */
enum TemperatureUnit {
    C {
        @Override
        double toCelsius(double value) {
            return value;
        }
    },
    F {
        @Override
        double toCelsius(double value) {
            return (value - 32) / 1.8;
        }
    };

    abstract double toCelsius(double value);
}
