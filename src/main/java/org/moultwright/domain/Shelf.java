package org.moultwright.domain;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Where containers stood: the stays of a room, read as places at an instant. */
public record Shelf(List<Stay> stays) {
    public Shelf {
        stays = List.copyOf(stays);
    }

    /** The stay a container is in at an instant. */
    public Optional<Stay> stayOf(String container, Instant instant) {
        return stays.stream()
                .filter(stay ->
                        stay.container().equals(container) && stay.span().contains(instant))
                .findFirst();
    }

    /**
     * The containers a container stands in at an instant, itself first, then the nearest around it. Ends
     * where nothing more is written down, or where a container would stand inside itself.
     */
    public List<String> pathOf(String container, Instant instant) {
        Set<String> path = new LinkedHashSet<>();
        Optional<String> next = Optional.of(container);
        while (next.isPresent() && path.add(next.get())) {
            next = stayOf(next.get(), instant).flatMap(Stay::inside);
        }
        return new ArrayList<>(path);
    }

    /** This shelf as these moves leave it, one after the other. */
    public Shelf with(List<ContainerMove> moves) {
        return moves.isEmpty() ? this : new Shelf(MovedStays.of(stays, moves));
    }

    /** The codes of what stands in a container at an instant. */
    public List<String> inside(String container, Instant instant) {
        return stays.stream()
                .filter(stay -> stay.inside().filter(container::equals).isPresent()
                        && stay.span().contains(instant))
                .map(Stay::container)
                .distinct()
                .toList();
    }
}
