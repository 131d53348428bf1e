package org.moultwright.domain;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The stays of a room as moves written later leave them. A move holds until the container was known to go
 * elsewhere or away; what stood before it is cut short, never rewritten.
 */
final class MovedStays {
    private MovedStays() {}

    static List<Stay> of(List<Stay> stays, List<ContainerMove> moves) {
        List<Stay> all = new ArrayList<>(stays);
        moves.forEach(move -> apply(all, move));
        return all;
    }

    private static void apply(List<Stay> stays, ContainerMove move) {
        Instant at = move.at();
        Optional<Stay> current = stays.stream()
                .filter(stay -> isOf(stay, move.container()) && stay.span().contains(at))
                .findFirst();
        Optional<Instant> end = current.map(stay -> stay.span().to())
                .orElseGet(() -> stays.stream()
                        .filter(stay -> isOf(stay, move.container()))
                        .map(stay -> stay.span().from())
                        .filter(at::isBefore)
                        .min(Comparator.naturalOrder()));
        stays.removeIf(stay -> isOf(stay, move.container())
                && stay.span().contains(at)
                && !stay.span().from().isBefore(at));
        stays.replaceAll(stay -> isOf(stay, move.container()) && stay.span().contains(at) ? until(stay, at) : stay);
        move.to()
                .ifPresent(
                        place -> stays.add(new Stay(move.container(), move.kind(), place.inside(), new Span(at, end))));
    }

    private static boolean isOf(Stay stay, String container) {
        return stay.container().equals(container);
    }

    private static Stay until(Stay stay, Instant end) {
        return new Stay(
                stay.container(),
                stay.kind(),
                stay.inside(),
                new Span(stay.span().from(), Optional.of(end)));
    }
}
