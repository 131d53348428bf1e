package org.moultwright.ui.climate;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.moultwright.domain.RollUp;
import org.moultwright.ui.chart.ReadingPyramid;
import org.moultwright.ui.chart.Trace;
import org.moultwright.ui.chart.TraceWindow;
import org.moultwright.workflow.ReadingLog;
import org.moultwright.workflow.TraceReadings;

/** Reads what a trace is drawn from. The one place where the screen asks the log for stretches of readings. */
final class TraceSource {
    /** A longer time without a good reading is a gap. */
    static final Duration LONGEST_BRIDGED = Duration.ofMinutes(30);

    /** How far from the reference a box may be before it is worth a colour (our choice, no source). */
    static final double BAND_CELSIUS = 1.0;

    private static final double ALARM_CELSIUS = 1.5;
    private static final Duration ALARM_AFTER = Duration.ofMinutes(30);

    private final ReadingLog log;
    private final Supplier<ProbePlaces> places;

    /** @param places where the probes stand, as last read */
    TraceSource(ReadingLog log, Supplier<ProbePlaces> places) {
        this.log = log;
        this.places = places;
    }

    /**
     * What is asked: some probes over one stretch.
     *
     * @param probes the one shown first leading
     * @param pixels how wide the stretch would be shown
     */
    record Question(List<String> probes, TraceWindow window, double pixels) {
        Question {
            probes = List.copyOf(probes);
        }
    }

    List<FetchedLine> read(Question asked) {
        ProbePlaces standing = places.get();
        List<FetchedLine> lines = new ArrayList<>();
        for (String probe : asked.probes()) {
            lines.add(read(probe, asked, standing));
        }
        return lines;
    }

    private FetchedLine read(String probe, Question asked, ProbePlaces standing) {
        TraceWindow window = asked.window();
        TraceReadings read = TraceReadings.of(log, probe, window.from(), window.to(), asked.pixels());
        List<RollUp> rollUps = standing.corrected(probe, read.rollUps());
        Duration bridged = FetchedLine.bridged(read.level());
        List<Trace.Stretch> excursions = standing.stay(probe, window.to())
                .flatMap(stay -> standing.referenceCelsius(stay.container(), window.to()))
                .map(celsius -> Excursions.of(rollUps, band(celsius, ALARM_CELSIUS), ALARM_AFTER, bridged))
                .orElse(List.of());
        ReadingPyramid readings = ReadingPyramid.of(rollUps, bridged, window.to());
        return new FetchedLine(probe, window, read.level(), readings, excursions);
    }

    /** The band aimed at where a probe stands. */
    static Optional<Trace.Band> target(ProbePlaces places, Optional<String> container, Instant at) {
        return container
                .flatMap(place -> places.referenceCelsius(place, at))
                .map(celsius -> band(celsius, BAND_CELSIUS));
    }

    private static Trace.Band band(double middleCelsius, double halfWidthCelsius) {
        return new Trace.Band(middleCelsius - halfWidthCelsius, middleCelsius + halfWidthCelsius);
    }
}
