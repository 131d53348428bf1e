package org.moultwright.compute.alarm;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.moultwright.compute.psychro.CondensationRisk;
import org.moultwright.compute.psychro.MeasuredAir;
import org.moultwright.domain.AlarmKind;
import org.moultwright.domain.AlarmTurn;

/** Drives a watch step by step. The wall clock can be set apart from the steady one. */
final class Watching {
    static final Instant START = Instant.parse("2026-03-01T00:00:00Z");

    private final WatchSettings settings;
    private final List<Watch.Event> events = new ArrayList<>();
    private Watch watch = Watch.START;
    private Instant wall = START;

    Watching(WatchSettings settings) {
        this.settings = settings;
    }

    /** As many readings ten seconds apart as fill a time, the last one at its end. */
    Watching read(double celsius, Duration lasting) {
        for (long i = 0; i < lasting.toSeconds() / 10; i++) {
            read(celsius, 10);
        }
        return this;
    }

    Watching read(double celsius, long afterSeconds) {
        return sample(afterSeconds, new Observation.Sample(celsius, celsius, Double.NaN, Double.NaN, Optional.empty()));
    }

    /** Air at 27 °C and 80 %, and a wall so far above or below its dew point, known to within 0.3 K. */
    Watching readWall(double aboveDewCelsius, long afterSeconds) {
        MeasuredAir air = new MeasuredAir(27, 0, 80, 0);
        CondensationRisk risk = air.risk(new MeasuredAir.Wall(air.air().dewPointCelsius() + aboveDewCelsius, 0.3));
        return sample(afterSeconds, new Observation.Sample(27, 27, 80, Double.NaN, Optional.of(risk)));
    }

    Watching readSet(double celsius, double setPoint, long afterSeconds) {
        return sample(afterSeconds, new Observation.Sample(celsius, celsius, Double.NaN, setPoint, Optional.empty()));
    }

    Watching silence(Duration lasting) {
        for (long i = 0; i < lasting.toSeconds() / 5; i++) {
            wall = wall.plusSeconds(5);
            take(watch.step(settings, Observation.ofTime(wall, 5000)));
        }
        return this;
    }

    Watching setWallClock(Duration by) {
        wall = wall.plus(by);
        return this;
    }

    Watching relearnHabit() {
        return take(watch.relearnHabit(wall));
    }

    Watching acknowledge(AlarmKind kind) {
        return take(watch.acknowledge(kind, wall));
    }

    Watching snooze(AlarmKind kind, Duration length) {
        return take(watch.snooze(kind, length, wall));
    }

    AlarmState alarm(AlarmKind kind) {
        return watch.alarm(kind);
    }

    Watch watch() {
        return watch;
    }

    Instant now() {
        return wall;
    }

    List<AlarmTurn> turns(AlarmKind kind) {
        return events.stream()
                .filter(event -> event.kind() == kind)
                .map(Watch.Event::turn)
                .toList();
    }

    List<Watch.Event> events() {
        return events;
    }

    private Watching sample(long afterSeconds, Observation.Sample sample) {
        wall = wall.plusSeconds(afterSeconds);
        return take(watch.step(settings, new Observation(wall, afterSeconds * 1000, Optional.of(sample))));
    }

    private Watching take(Watch.Step step) {
        watch = step.watch();
        events.addAll(step.events());
        return this;
    }
}
