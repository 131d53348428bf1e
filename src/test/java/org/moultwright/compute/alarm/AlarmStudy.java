package org.moultwright.compute.alarm;

import java.time.Duration;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.moultwright.compute.alarm.SimulatedIncubator.Fault;
import org.moultwright.domain.AlarmKind;
import org.moultwright.domain.AlarmTurn;

/** Watches invented incubators, quiet ones and ones with a fault, and tells what the alarms made of them. */
public final class AlarmStudy {
    private static final WatchSettings SETTINGS = AlarmRules.usual(SimulatedIncubator.PERIOD, 0.1);
    private static final int QUIET_DAYS = 7;
    private static final int FAULT_DAYS = 5;

    /** A battery gives signs before its end. */
    private static final Duration EARLIEST = Duration.ofMinutes(-30);

    private AlarmStudy() {}

    /** The alarms a quiet week raises; there should be none. */
    public static List<Watch.Event> quietWeek(long seed) {
        SimulatedIncubator incubator = new SimulatedIncubator(seed, Fault.NONE, 0, QUIET_DAYS);
        List<Watch.Event> raised = new ArrayList<>();
        Watch watch = Watch.START;
        for (Duration time = Duration.ZERO;
                time.compareTo(Duration.ofDays(QUIET_DAYS)) < 0;
                time = time.plus(SimulatedIncubator.PERIOD)) {
            Watch.Step step = watch.step(SETTINGS, incubator.next());
            watch = step.watch();
            raised.addAll(step.events());
        }
        return raised;
    }

    /** The first alarm of each kind from half an hour before a fault of the third day on. */
    public static Map<AlarmKind, Duration> afterFault(Fault fault, long seed) {
        double faultDay = 2 + new SplittableRandom(seed).split().nextDouble();
        SimulatedIncubator incubator = new SimulatedIncubator(seed, fault, faultDay, FAULT_DAYS);
        long faultMillis = (long) (faultDay * 86_400_000);
        Map<AlarmKind, Duration> first = new EnumMap<>(AlarmKind.class);
        Watch watch = Watch.START;
        long millis = 0;
        while (millis < Duration.ofDays(FAULT_DAYS).toMillis()) {
            Watch.Step step = watch.step(SETTINGS, incubator.next());
            watch = step.watch();
            millis += SimulatedIncubator.PERIOD.toMillis();
            Duration after = Duration.ofMillis(millis - faultMillis);
            step.events().stream()
                    .filter(event -> event.turn() == AlarmTurn.RAISED && after.compareTo(EARLIEST) > 0)
                    .forEach(event -> first.putIfAbsent(event.kind(), after));
        }
        return first;
    }
}
