package org.moultwright.ui.instrument;

import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import org.moultwright.domain.ProbeStay;
import org.moultwright.domain.Shelf;

/**
 * Which probes can be held against the display of a container: those in it, and in what stands inside it.
 *
 * @param stays of all probes, as calibrated by now
 * @param shelf where containers stood
 * @param now when a display is read off
 */
public record DisplayPlaces(List<ProbeStay> stays, Shelf shelf, Instant now) {
    public DisplayPlaces {
        stays = List.copyOf(stays);
    }

    /** Containers whose display a probe can judge, the outermost last. */
    List<String> containers() {
        return stays.stream()
                .filter(stay -> stay.span().contains(now))
                .flatMap(stay -> shelf.pathOf(stay.container(), now).stream())
                .distinct()
                .toList();
    }

    /** The probes that measured for a container at an instant, as if each lay in it; those in it itself first. */
    List<ProbeStay> of(String container, Instant at) {
        Stream<ProbeStay> within = stays.stream()
                .filter(stay -> stay.span().contains(at) && !stay.container().equals(container))
                .filter(stay -> shelf.pathOf(stay.container(), at).contains(container))
                .map(stay ->
                        new ProbeStay(stay.probe(), container, stay.span(), stay.correction(), stay.calibratedAt()));
        return Stream.concat(stays.stream().filter(stay -> stay.container().equals(container)), within)
                .toList();
    }
}
