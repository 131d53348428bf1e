package org.moultwright.compute.alarm;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.Map;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.moultwright.compute.alarm.SimulatedIncubator.Fault;
import org.moultwright.domain.AlarmKind;

/** The bounds promised in docs/methods/alarms.md, on fewer seeds than its table. */
class SimulatedAlarmsTest {
    private static final int SEEDS = 12;

    @Test
    void aQuietWeekRaisesNothing() {
        LongStream.range(0, SEEDS)
                .forEach(seed -> assertThat(AlarmStudy.quietWeek(seed))
                        .as("seed %d", seed)
                        .isEmpty());
    }

    @ParameterizedTest
    @CsvSource({
        "HEATER_STUCK_ON, 120",
        "HEATER_DEAD, 150",
        "DOOR_LEFT_OPEN, 30",
        "PROBE_FALLEN, 20",
        "BATTERY_FLAT, 1",
        "PROBE_STUCK, 181",
        "THERMOSTAT_DRIFTS, 1680",
        "VENTS_SHUT, 300"
    })
    void eachFaultIsFoundWithinItsBound(Fault fault, long minutes) {
        LongStream.range(0, SEEDS).forEach(seed -> {
            Map<AlarmKind, Duration> found = AlarmStudy.afterFault(fault, seed);
            assertThat(found.values().stream().min(Duration::compareTo))
                    .as("seed %d", seed)
                    .hasValueSatisfying(after -> assertThat(after).isLessThanOrEqualTo(Duration.ofMinutes(minutes)));
        });
    }

    @Test
    void eachFaultIsCalledByItsName() {
        LongStream.range(0, SEEDS).forEach(seed -> {
            assertThat(AlarmStudy.afterFault(Fault.HEATER_STUCK_ON, seed)).containsKey(AlarmKind.VERY_HIGH);
            assertThat(AlarmStudy.afterFault(Fault.HEATER_DEAD, seed)).containsKey(AlarmKind.LOW);
            assertThat(AlarmStudy.afterFault(Fault.DOOR_LEFT_OPEN, seed)).containsKey(AlarmKind.RATE);
            assertThat(AlarmStudy.afterFault(Fault.PROBE_FALLEN, seed)).containsKey(AlarmKind.RATE);
            assertThat(AlarmStudy.afterFault(Fault.BATTERY_FLAT, seed)).containsKey(AlarmKind.SILENT);
            assertThat(AlarmStudy.afterFault(Fault.PROBE_STUCK, seed)).containsKey(AlarmKind.STUCK);
            assertThat(AlarmStudy.afterFault(Fault.THERMOSTAT_DRIFTS, seed)).containsKey(AlarmKind.DRIFT);
            assertThat(AlarmStudy.afterFault(Fault.VENTS_SHUT, seed)).containsKey(AlarmKind.CONDENSATION);
        });
    }
}
