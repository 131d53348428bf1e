package org.moultwright.workflow;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.moultwright.compute.alarm.AlarmRules;
import org.moultwright.compute.alarm.AlarmState;
import org.moultwright.compute.alarm.Observation;
import org.moultwright.compute.alarm.Snooze;
import org.moultwright.compute.alarm.WatchSettings;
import org.moultwright.compute.psychro.MeasuredAir;
import org.moultwright.domain.AlarmEntry;
import org.moultwright.domain.AlarmKind;
import org.moultwright.domain.AlarmLimits;
import org.moultwright.domain.Correction;
import org.moultwright.domain.ProbeStay;
import org.moultwright.domain.Quality;
import org.moultwright.domain.Reading;
import org.moultwright.domain.ReadingSeries;

/** The watch over what one probe measures: gives its readings their meaning, and follows its rules. */
final class ProbeWatch {
    private final String probe;
    private final String name;
    private final WatchContainer watching;
    private final ReportingHabit habit = new ReportingHabit();
    private WatchPlaces places;
    private AlarmLimits limits;
    private double celsius = Double.NaN;
    private double humidityPercent = Double.NaN;
    private Optional<Instant> heardAt = Optional.empty();

    ProbeWatch(String probe, String name, WatchContainer watching, WatchPlaces places, AlarmLimits limits) {
        this.probe = probe;
        this.name = name;
        this.watching = watching;
        this.places = places;
        this.limits = limits;
    }

    /** The rules before anything is known of a place. */
    static WatchSettings firstRules(AlarmLimits limits) {
        return AlarmRules.within(limits, ReportingHabit.USUAL, 0);
    }

    String name() {
        return name;
    }

    /** Goes on from the good readings of before. */
    void remember(ReadingSeries past, Instant now) {
        List<Observation> observed = new ArrayList<>();
        past.forEach(reading -> {
            if (reading.quality() == Quality.GOOD) {
                long elapsedMillis = heardAt.map(before -> Duration.between(before, reading.takenAt()))
                        .orElse(Duration.ZERO)
                        .toMillis();
                observed.add(new Observation(
                        reading.takenAt(), elapsedMillis, Optional.of(take(reading, Optional.empty()))));
            }
        });
        judgeBy(now);
        watching.remember(observed);
    }

    /** @param onWall what the probe on the coldest wall says, if one lies there and is heard */
    void heard(Reading reading, Optional<MeasuredAir.Wall> onWall, Instant now) {
        Observation.Sample sample = take(reading, onWall);
        judgeBy(now);
        watching.heard(sample);
    }

    void tick(Instant now) {
        judgeBy(now);
        watching.tick();
    }

    /** Its places or limits may be others now; a probe that is calibrated otherwise learns its habit anew. */
    void standsIn(WatchPlaces others, AlarmLimits otherLimits, Instant now) {
        boolean isRecalibrated = !correction(places, now).equals(correction(others, now));
        places = others;
        limits = otherLimits;
        judgeBy(now);
        if (isRecalibrated) {
            watching.relearnHabit();
        }
    }

    WatchContainer watching() {
        return watching;
    }

    WatchView.Place place() {
        return new WatchView.Place(name, probe, celsius, humidityPercent, heardAt);
    }

    List<WatchView.Alarm> alarms() {
        return Arrays.stream(AlarmKind.values())
                .filter(kind -> watching.alarm(kind).phase() != AlarmState.Phase.QUIET)
                .flatMap(kind -> watching.raised(kind).map(line -> shown(kind, line)).stream())
                .toList();
    }

    /** What this probe measures of a wall it lies on, unless it is silent. */
    Optional<MeasuredAir.Wall> wall(Instant now) {
        return heardAt.filter(
                        at -> Duration.between(at, now).abs().compareTo(AlarmRules.longestGap(habit.period())) <= 0)
                .map(at -> new MeasuredAir.Wall(celsius, places.sdCelsius(probe, at)));
    }

    private Observation.Sample take(Reading reading, Optional<MeasuredAir.Wall> onWall) {
        Observation.Sample sample = places.sample(probe, reading, onWall);
        habit.heard(reading.takenAt());
        celsius = sample.celsius();
        humidityPercent = reading.humidityPercent();
        heardAt = Optional.of(reading.takenAt());
        return sample;
    }

    private void judgeBy(Instant now) {
        double sdCelsius = places.stay(probe, now).map(ProbeStay::sdCelsius).orElse(0.0);
        WatchSettings rules =
                AlarmRules.within(limits.around(places.setPointCelsius(probe, now)), habit.period(), sdCelsius);
        watching.watchBy(places.wall(probe, now).isPresent() ? rules : rules.without(AlarmKind.CONDENSATION));
    }

    private Correction correction(WatchPlaces where, Instant now) {
        return where.stay(probe, now).map(ProbeStay::correction).orElse(Correction.constant(0, 0));
    }

    private WatchView.Alarm shown(AlarmKind kind, AlarmEntry line) {
        AlarmState state = watching.alarm(kind);
        return new WatchView.Alarm(
                name,
                kind,
                state.phase(),
                line.at(),
                line.value(),
                celsius,
                state.snooze().map(Snooze::end),
                state.isSounding(),
                state.isEscalated());
    }
}
