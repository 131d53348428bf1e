package org.moultwright.exchange;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.moultwright.domain.Span;
import org.moultwright.domain.Stay;

/** What must hold between the rows of several files: no container in two places, no probe or tray from nowhere. */
final class PlaceChecks {
    private final Problems problems;

    PlaceChecks(Problems problems) {
        this.problems = problems;
    }

    void check(BroodRows rows) {
        noneInTwoPlaces(rows.stays());
        Set<String> known = new HashSet<>();
        rows.stays().forEach(stay -> known.add(stay.container()));
        rows.probeStays().forEach(stay -> noticeUnless(known, stay.container(), "probes.csv"));
        rows.setPoints().forEach(point -> noticeUnless(known, point.container(), "setpoints.csv"));
        rows.checks().forEach(check -> noticeUnless(known, check.tray(), "checks.csv"));
        noPotTwice(rows);
    }

    private void noneInTwoPlaces(List<Stay> stays) {
        Map<String, Stay> lastOf = new HashMap<>();
        stays.stream()
                .sorted((a, b) -> a.span().from().compareTo(b.span().from()))
                .forEach(stay -> {
                    Stay before = lastOf.put(stay.container(), stay);
                    if (before != null && overlap(before.span(), stay.span())) {
                        problems.add(
                                PlaceTables.CONTAINERS.file(),
                                0,
                                "from",
                                stay.container() + " from " + stay.span().from(),
                                "a stay that begins when the one before it has ended");
                    }
                });
    }

    private void noPotTwice(BroodRows rows) {
        Set<String> codes = new HashSet<>();
        rows.pots().forEach(pot -> {
            if (!codes.add(pot.code())) {
                problems.add(AnimalTables.POTS.file(), 0, "pot", pot.code(), "each pot's code once");
            }
        });
    }

    private void noticeUnless(Set<String> known, String container, String file) {
        if (!known.contains(container)) {
            problems.notice(
                    "%s: '%s' is not in containers.csv; where it stood is not known".formatted(file, container));
        }
    }

    private static boolean overlap(Span earlier, Span later) {
        return earlier.to().isEmpty() || earlier.to().get().isAfter(later.from());
    }
}
