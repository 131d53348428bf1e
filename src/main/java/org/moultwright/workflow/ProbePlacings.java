package org.moultwright.workflow;

import java.util.List;
import java.util.stream.Stream;
import org.moultwright.domain.ProbeStay;

/** Where a probe is known to have stood: by any brood, or by what was written at the desk. */
record ProbePlacings(BroodBook book, ClimateBook climate) {
    List<ProbeStay> of(String probe) {
        return Stream.concat(WatchPlaces.of(book).probeStays().stream(), climate.placings().stream())
                .filter(stay -> stay.probe().equals(probe))
                .distinct()
                .toList();
    }
}
