package org.moultwright.workflow;

import java.util.List;
import org.moultwright.domain.Extremes;
import org.moultwright.domain.HandReading;
import org.moultwright.domain.ProbeStay;

/**
 * What the keeper wrote down of the climate without a wire. It concerns every brood that knows the container.
 *
 * @param extremes lowest and highest values
 * @param readings readings taken off a thermometer
 * @param placings where probes were put, or hand-read thermometers hang
 */
public record ClimateWriting(List<Extremes> extremes, List<HandReading> readings, List<ProbeStay> placings) {
    public static final ClimateWriting NOTHING = new ClimateWriting(List.of(), List.of(), List.of());

    public ClimateWriting {
        extremes = List.copyOf(extremes);
        readings = List.copyOf(readings);
        placings = List.copyOf(placings);
    }

    boolean isNothing() {
        return extremes.isEmpty() && readings.isEmpty() && placings.isEmpty();
    }
}
