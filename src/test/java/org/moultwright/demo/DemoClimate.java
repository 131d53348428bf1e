package org.moultwright.demo;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.moultwright.domain.Quality;
import org.moultwright.domain.ReadingSeries;
import org.moultwright.domain.Span;

/**
 * What the probes of the demo room read. Invented.
 *
 * <p>The incubator is 1.3 °C cooler than it displays: truly 25.7 °C until the set-point goes up on the evening
 * of 6 April, then 27.0. On top: the thermostat's ripple of 0.25 °C over 80 minutes, 0.2 °C over the day, a dip
 * of 1 to 3 °C for twenty minutes whenever the door opens for a check, and a little noise. Every value depends
 * on the seed, the probe and the instant alone, so that two broods in one box read the same.
 */
final class DemoClimate {
    static final Instant SET_POINT_RAISED = Instant.parse("2026-04-06T20:30:00Z");

    private static final long SEED = 20260227;
    private static final Duration STEP = Duration.ofMinutes(5);
    private static final Duration DIP = Duration.ofMinutes(20);
    private static final List<Span> SILENT = List.of(
            span("2026-03-18T00:00:00Z", "2026-03-20T00:00:00Z"), span("2026-04-29T20:00:00Z", "2026-04-30T06:30:00Z"));

    private final String probe;
    private final double readsTooHighCelsius;
    private final boolean fallsSilent;
    private final List<Instant> doorOpenings;

    private DemoClimate(String probe, double readsTooHighCelsius, boolean fallsSilent, List<Instant> doorOpenings) {
        this.probe = probe;
        this.readsTooHighCelsius = readsTooHighCelsius;
        this.fallsSilent = fallsSilent;
        this.doorOpenings = List.copyOf(doorOpenings);
    }

    /** P-1 in box 1 reads 0.2 °C high and is silent on 18 and 19 March and in the night of 29 April. */
    static DemoClimate ofBox1(List<Instant> doorOpenings) {
        return new DemoClimate("P-1", 0.2, true, doorOpenings);
    }

    /** P-2 in box 2 reads true. */
    static DemoClimate ofBox2(List<Instant> doorOpenings) {
        return new DemoClimate("P-2", 0, false, doorOpenings);
    }

    /** The readings from one instant until before another, one every five minutes. */
    ReadingSeries readings(Instant from, Instant to) {
        ReadingSeries.Builder readings = new ReadingSeries.Builder();
        for (Instant at = from; at.isBefore(to); at = at.plus(STEP)) {
            Instant now = at;
            if (!fallsSilent || SILENT.stream().noneMatch(span -> span.contains(now))) {
                SplittableRandom random = randomOf(at);
                readings.add(at.toEpochMilli(), temperature(at, random), humidity(at, random), Quality.GOOD);
            }
        }
        return readings.build();
    }

    private double temperature(Instant at, SplittableRandom random) {
        double mean = at.isBefore(SET_POINT_RAISED) ? 25.7 : 27.0;
        double minutes = at.getEpochSecond() / 60.0;
        double ripple = 0.25 * Math.sin(2 * Math.PI * minutes / 80);
        double day = 0.2 * Math.sin(2 * Math.PI * (minutes / 1440 - 0.375));
        double noise = (random.nextDouble() - 0.5) * 0.1;
        return rounded(mean + ripple + day + noise - dip(at) + readsTooHighCelsius, 100);
    }

    /** Within 72 and 80 %: a slow swing of the week, drier when the door stood open. */
    private double humidity(Instant at, SplittableRandom random) {
        double days = at.getEpochSecond() / 86_400.0;
        double slow = 76.5 + 2 * Math.sin(2 * Math.PI * days / 6.3) + Math.sin(2 * Math.PI * days);
        return rounded(Math.max(72, slow - dip(at) + (random.nextDouble() - 0.5)), 10);
    }

    private double dip(Instant at) {
        for (Instant opened : doorOpenings) {
            long seconds = Duration.between(opened, at).toSeconds();
            if (seconds >= 0 && seconds < DIP.toSeconds()) {
                double depth = 1 + 2 * randomOf(opened).nextDouble();
                return depth * (1 - seconds / (double) DIP.toSeconds());
            }
        }
        return 0;
    }

    private SplittableRandom randomOf(Instant at) {
        return new SplittableRandom(SEED ^ (at.getEpochSecond() * 31 + probe.hashCode()) * 0x9E3779B97F4A7C15L);
    }

    private static double rounded(double value, int steps) {
        return Math.rint(value * steps) / steps;
    }

    private static Span span(String from, String to) {
        return new Span(Instant.parse(from), Optional.of(Instant.parse(to)));
    }

    /** Midnight by universal time, so that the readings of all broods fall on the same instants. */
    static Instant startOfDay(LocalDate date) {
        return date.atStartOfDay(ZoneOffset.UTC).toInstant();
    }
}
