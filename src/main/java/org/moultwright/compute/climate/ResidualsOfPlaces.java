package org.moultwright.compute.climate;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The residuals of every place some animals were in, learned from all that was ever measured around it. */
final class ResidualsOfPlaces {
    private final Measurements measurements;
    private final Whereabouts whereabouts;
    private final Nominals nominals;
    private final long untilMillis;
    private final Map<Place, List<Stretch>> historyByPlace = new HashMap<>();
    private final Map<Key, Residuals> known = new HashMap<>();

    ResidualsOfPlaces(Measurements measurements, Whereabouts whereabouts, Nominals nominals, long untilMillis) {
        this.measurements = measurements;
        this.whereabouts = whereabouts;
        this.nominals = nominals;
        this.untilMillis = untilMillis;
    }

    /** The residuals against the nominal temperature of a container, as measured around a place. */
    Residuals of(Place place, String container) {
        return known.computeIfAbsent(
                new Key(place, container),
                key -> Residuals.of(container, historyByPlace.computeIfAbsent(place, this::history), nominals));
    }

    private List<Stretch> history(Place place) {
        return measurements.over(
                whereabouts.surroundings(place, measurements.firstMillis().orElse(untilMillis), untilMillis));
    }

    private record Key(Place place, String container) {}
}
