package org.moultwright.compute.climate;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.SetPoint;

/** What every place was meant to have: the innermost set-point in force, else the reference temperature. */
final class Nominals {
    private final Map<String, List<SetPoint>> setPointsByContainer;
    private final double referenceCelsius;

    Nominals(BroodRecord record) {
        this.setPointsByContainer = record.setPoints().stream()
                .sorted(Comparator.comparing(
                        (SetPoint setPoint) -> setPoint.span().from()))
                .collect(Collectors.groupingBy(SetPoint::container));
        this.referenceCelsius = record.brood().referenceTemperatureCelsius();
    }

    Nominal at(Place place, long millis) {
        Instant at = Instant.ofEpochMilli(millis);
        for (String container : place.containers()) {
            Optional<SetPoint> inForce = latestInForce(container, at);
            if (inForce.isPresent()) {
                return new Nominal(container, inForce.get().temperatureCelsius(), true);
            }
        }
        return new Nominal(place.outermost(), referenceCelsius, false);
    }

    private Optional<SetPoint> latestInForce(String container, Instant at) {
        return setPointsByContainer.getOrDefault(container, List.of()).stream()
                .filter(setPoint -> setPoint.span().contains(at))
                .reduce((earlier, later) -> later);
    }
}
