package org.moultwright.exchange;

import java.time.Instant;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.moultwright.domain.Account;
import org.moultwright.domain.Extremes;
import org.moultwright.domain.ProbeStay;
import org.moultwright.domain.SetPoint;
import org.moultwright.domain.Span;
import org.moultwright.domain.Stay;
import org.moultwright.exchange.TableReader.Placed;
import org.moultwright.language.Texts;

/** What must hold between rows of places: nothing in two places at once. */
final class PlaceChecks {
    private final Problems problems;

    PlaceChecks(Problems problems) {
        this.problems = problems;
    }

    void stays(List<Placed<Stay>> stays) {
        noneAtOnce(PlaceTables.CONTAINERS, stays, Stay::container, Stay::span);
    }

    void probes(List<Placed<ProbeStay>> stays) {
        noneAtOnce(PlaceTables.PROBES, stays, ProbeStay::probe, ProbeStay::span);
    }

    void setPoints(List<Placed<SetPoint>> points) {
        noneAtOnce(PlaceTables.SET_POINTS, points, SetPoint::container, SetPoint::span);
    }

    /** A day within a week may have its own; of the same span there is one. */
    void extremes(List<Placed<Extremes>> rows) {
        Map<Object, Placed<Extremes>> known = new HashMap<>();
        for (Placed<Extremes> row : rows) {
            Extremes extremes = row.value();
            Placed<Extremes> before =
                    known.putIfAbsent(List.of(extremes.container(), extremes.from(), extremes.to()), row);
            if (before != null) {
                problems.add(
                        PlaceTables.EXTREMES.file(),
                        row.line(),
                        "from",
                        extremes.from().toString(),
                        Texts.say("another span than that of '{0}' in line {1}", extremes.container(), before.line()));
            }
        }
    }

    /** A place the keeper never wrote down is no mistake; the climate there is just not known. */
    void noticeUnknown(BroodRows rows) {
        Set<String> known = new HashSet<>();
        rows.stays().forEach(stay -> known.add(stay.container()));
        rows.probeStays().forEach(stay -> noticeUnless(known, stay.container(), "probes.csv"));
        rows.setPoints().forEach(point -> noticeUnless(known, point.container(), "setpoints.csv"));
        rows.extremes().forEach(extremes -> noticeUnless(known, extremes.container(), "extremes.csv"));
        rows.checks().forEach(check -> noticeUnless(known, check.tray(), "checks.csv"));
        rows.moves().stream()
                .flatMap(move -> Stream.of(move.from(), move.to()))
                .filter(Account::isTray)
                .forEach(tray -> noticeUnless(known, tray.code(), "moves.csv"));
    }

    private <T> void noneAtOnce(
            Table<T> table, List<Placed<T>> rows, Function<T, String> subject, Function<T, Span> span) {
        Map<String, Placed<T>> lastOf = new HashMap<>();
        rows.stream()
                .sorted(Comparator.comparing(row -> span.apply(row.value()).from()))
                .forEach(row -> {
                    Placed<T> before = lastOf.put(subject.apply(row.value()), row);
                    Instant from = span.apply(row.value()).from();
                    if (before != null && endsAfter(span.apply(before.value()), from)) {
                        problems.add(
                                table.file(),
                                row.line(),
                                "from",
                                from.toString(),
                                Texts.say(
                                        "an instant at which '{0}' of line {1} has ended",
                                        subject.apply(row.value()), before.line()));
                    }
                });
    }

    private void noticeUnless(Set<String> known, String container, String file) {
        if (!known.contains(container)) {
            problems.notice(
                    "%s: '%s' is not in containers.csv; where it stood is not known".formatted(file, container));
        }
    }

    private static boolean endsAfter(Span earlier, Instant instant) {
        return earlier.to().isEmpty() || earlier.to().get().isAfter(instant);
    }
}
