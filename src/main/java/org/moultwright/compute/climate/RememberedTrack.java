package org.moultwright.compute.climate;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.moultwright.domain.Extremes;

/**
 * What a container's lowest and highest values tell of it. Where spans overlap the shortest tells, as it lies within
 * what the longer one says; of equally long ones the one written last.
 */
final class RememberedTrack extends Track {
    private static final Comparator<Extremes> SHORTEST = Comparator.comparing(Extremes::length);

    private RememberedTrack(String container, List<Ramp> ramps) {
        super(container, ramps);
    }

    /** One for each container; what was read after an instant is left out. */
    static List<RememberedTrack> all(List<Extremes> extremes, Instant until) {
        Map<String, List<Extremes>> byContainer = extremes.stream()
                .filter(one -> !one.to().isAfter(until))
                .collect(Collectors.groupingBy(Extremes::container, LinkedHashMap::new, Collectors.toList()));
        return byContainer.entrySet().stream()
                .map(container -> new RememberedTrack(container.getKey(), ramps(container.getValue())))
                .toList();
    }

    @Override
    Function<Ramp, LivedPiece> piecesIn(Place place) {
        TemperatureSource source = new TemperatureSource.BetweenExtremes(container(), place.isAssumed());
        return ramp -> new LivedPiece(ramp, source, Uncertainty.ofExtremes(2 * ramp.swingCelsius(), place));
    }

    private static List<Ramp> ramps(List<Extremes> extremes) {
        TreeSet<Instant> cuts = new TreeSet<>();
        extremes.forEach(one -> {
            cuts.add(one.from());
            cuts.add(one.to());
        });
        List<Ramp> ramps = new ArrayList<>();
        for (Instant from : cuts) {
            Optional.ofNullable(cuts.higher(from))
                    .ifPresent(to -> telling(extremes, from)
                            .map(one -> Ramp.swinging(
                                    from.toEpochMilli(), to.toEpochMilli(), one.lowestCelsius(), one.highestCelsius()))
                            .filter(ramp -> ramp.fromMillis() < ramp.toMillis())
                            .ifPresent(ramps::add));
        }
        return ramps;
    }

    private static Optional<Extremes> telling(List<Extremes> extremes, Instant at) {
        return extremes.stream()
                .filter(one -> !one.from().isAfter(at) && one.to().isAfter(at))
                .reduce((told, other) -> SHORTEST.compare(other, told) <= 0 ? other : told);
    }
}
