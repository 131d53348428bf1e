package org.moultwright.ui.shell;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * What matters now, shown above every screen.
 *
 * @param probes the latest reading of each probe
 * @param trays how far the round is, if there is any tray
 * @param next the next moult to come, if one can be told
 */
public record TopLine(List<ProbeNow> probes, Optional<TraysLeft> trays, Optional<NextMoult> next) {
    public static final TopLine NOTHING = new TopLine(List.of(), Optional.empty(), Optional.empty());

    public TopLine {
        probes = List.copyOf(probes);
    }

    /** The same with what was heard since, place by place: the later reading of each stands. */
    TopLine withHeard(List<ProbeNow> heard) {
        Map<String, ProbeNow> byPlace = new TreeMap<>();
        Stream.concat(probes.stream(), heard.stream())
                .forEach(probe -> byPlace.merge(
                        probe.place(), probe, (one, other) -> other.takenAt().isAfter(one.takenAt()) ? other : one));
        return new TopLine(List.copyOf(byPlace.values()), trays, next);
    }

    /**
     * A probe's latest reading.
     *
     * @param place where the probe is, such as "box 1"
     * @param temperatureCelsius corrected temperature in °C
     * @param takenAt when it was measured
     */
    public record ProbeNow(String place, double temperatureCelsius, Instant takenAt) {}

    /** How many trays still want their round, of how many. */
    public record TraysLeft(int left, int all) {}

    /**
     * The next moult.
     *
     * @param event what happens, such as "A1 and A2 become slings"
     * @param window when, such as "4 to 8 May"
     */
    public record NextMoult(String event, String window) {}
}
