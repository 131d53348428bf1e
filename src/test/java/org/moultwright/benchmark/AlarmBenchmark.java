package org.moultwright.benchmark;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.moultwright.compute.alarm.AlarmStudy;
import org.moultwright.compute.alarm.SimulatedIncubator.Fault;
import org.moultwright.domain.AlarmKind;

/** How many quiet weeks raise an alarm, and how soon each fault is found: the table of docs/methods/alarms.md. */
public final class AlarmBenchmark {
    private static final int SEEDS = 200;

    private AlarmBenchmark() {}

    public static void main(String[] arguments) {
        int seeds = arguments.length > 0 ? Integer.parseInt(arguments[0]) : SEEDS;
        long alarmed = LongStream.range(0, seeds)
                .parallel()
                .filter(seed -> {
                    var events = AlarmStudy.quietWeek(seed);
                    if (!events.isEmpty()) {
                        System.out.println("seed " + seed + ": " + events.get(0));
                    }
                    return !events.isEmpty();
                })
                .count();
        System.out.printf("quiet weeks with an alarm: %d of %d%n", alarmed, seeds);
        System.out.println("fault | first alarm: found, median, 90 %, longest | found by kind, median");
        for (Fault fault : Fault.values()) {
            if (fault != Fault.NONE) {
                tell(fault, seeds);
            }
        }
    }

    private static void tell(Fault fault, int seeds) {
        List<Map<AlarmKind, Duration>> found = IntStream.range(0, seeds)
                .parallel()
                .mapToObj(seed -> AlarmStudy.afterFault(fault, seed))
                .toList();
        List<Duration> first = new ArrayList<>();
        Map<AlarmKind, List<Duration>> byKind = new TreeMap<>();
        for (Map<AlarmKind, Duration> one : found) {
            one.values().stream().min(Duration::compareTo).ifPresent(first::add);
            one.forEach((kind, after) ->
                    byKind.computeIfAbsent(kind, unseen -> new ArrayList<>()).add(after));
        }
        StringBuilder kinds = new StringBuilder();
        byKind.forEach(
                (kind, times) -> kinds.append("%s %d, %s; ".formatted(kind.key(), times.size(), minutes(times, 0.5))));
        System.out.printf(
                "%s | %d of %d, %s, %s, %s | %s%n",
                fault, first.size(), seeds, minutes(first, 0.5), minutes(first, 0.9), minutes(first, 1), kinds);
    }

    private static String minutes(List<Duration> times, double share) {
        if (times.isEmpty()) {
            return "-";
        }
        List<Duration> sorted = times.stream().sorted().toList();
        int place = (int) Math.ceil(share * sorted.size()) - 1;
        return "%.1f min".formatted(sorted.get(Math.max(place, 0)).toSeconds() / 60.0);
    }
}
