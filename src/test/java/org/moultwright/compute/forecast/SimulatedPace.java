package org.moultwright.compute.forecast;

import java.util.Arrays;
import java.util.function.IntToDoubleFunction;
import org.moultwright.compute.rate.RateCurve;

/** Development by the hour of the room, along a rate curve and a temperature. */
final class SimulatedPace {
    private final double[] reached = new double[SimulatedRoom.DAYS * 24 + 1];

    SimulatedPace(RateCurve relativeRate, IntToDoubleFunction celsiusByHour) {
        for (int hour = 0; hour < reached.length - 1; hour++) {
            reached[hour + 1] = reached[hour] + relativeRate.at(celsiusByHour.applyAsDouble(hour)) / 24;
        }
    }

    double dayAtAge(double laidDay, double age) {
        double target = reached[(int) (laidDay * 24)] + age;
        int hour = Arrays.binarySearch(reached, target);
        int next = hour >= 0 ? hour : -hour - 1;
        return next >= reached.length ? Double.POSITIVE_INFINITY : next / 24.0;
    }

    /** What was lived from one day to another. */
    double ageAtDay(double laidDay, double day) {
        return reached[(int) (day * 24)] - reached[(int) (laidDay * 24)];
    }
}
