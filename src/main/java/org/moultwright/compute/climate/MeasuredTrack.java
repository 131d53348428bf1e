package org.moultwright.compute.climate;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.moultwright.domain.ProbeStay;
import org.moultwright.domain.Quality;
import org.moultwright.domain.Reading;
import org.moultwright.domain.ReadingSeries;

/**
 * What one probe measured in one container: straight lines between good readings, its offset taken off.
 *
 * <p>Readings more than {@link #LONGEST_BRIDGE_MILLIS} apart are not joined. A reading with no neighbour
 * that near stands for the quarter-hour around it. Values no probe can mean are left out.
 */
final class MeasuredTrack extends Track {
    static final long LONGEST_BRIDGE_MILLIS = Duration.ofHours(3).toMillis();

    private final ProbeStay stay;

    private MeasuredTrack(ProbeStay stay, List<Ramp> ramps) {
        super(stay.container(), ramps);
        this.stay = stay;
    }

    static MeasuredTrack of(ProbeStay stay, ReadingSeries readings, Instant until) {
        Instant end = stay.span().to().filter(to -> to.isBefore(until)).orElse(until.plusMillis(1));
        int first = readings.indexAtOrAfter(stay.span().from());
        int last = readings.indexAtOrAfter(end);
        List<Ramp> ramps = new ArrayList<>();
        int previous = -1;
        boolean isAlone = false;
        for (int i = first; i < last; i++) {
            if (!isUsable(readings, i)) {
                continue;
            }
            if (previous >= 0 && readings.epochMillis(i) - readings.epochMillis(previous) <= LONGEST_BRIDGE_MILLIS) {
                ramps.add(between(readings, previous, i, stay));
                isAlone = false;
            } else {
                if (isAlone) {
                    ramps.add(around(readings, previous, stay));
                }
                isAlone = true;
            }
            previous = i;
        }
        if (isAlone) {
            ramps.add(around(readings, previous, stay));
        }
        return new MeasuredTrack(stay, ramps);
    }

    ProbeStay stay() {
        return stay;
    }

    @Override
    Function<Ramp, LivedPiece> piecesIn(Place place) {
        TemperatureSource source = new TemperatureSource.Probe(stay.probe(), stay.container(), place.isAssumed());
        double sdCelsius = Uncertainty.ofProbe(stay, place);
        return ramp -> new LivedPiece(ramp, source, sdCelsius);
    }

    private static boolean isUsable(ReadingSeries readings, int i) {
        double celsius = readings.temperatureCelsius(i);
        return readings.quality(i) == Quality.GOOD
                && celsius >= Reading.LOWEST_CELSIUS
                && celsius <= Reading.HIGHEST_CELSIUS;
    }

    private static Ramp between(ReadingSeries readings, int earlier, int later, ProbeStay stay) {
        return new Ramp(
                readings.epochMillis(earlier),
                readings.epochMillis(later),
                stay.airCelsius(readings.temperatureCelsius(earlier)),
                stay.airCelsius(readings.temperatureCelsius(later)));
    }

    private static Ramp around(ReadingSeries readings, int i, ProbeStay stay) {
        long half = QuarterHour.MILLIS / 2;
        return Ramp.level(
                readings.epochMillis(i) - half,
                readings.epochMillis(i) + half,
                stay.airCelsius(readings.temperatureCelsius(i)));
    }
}
