package org.moultwright.device.link;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.moultwright.device.DeviceException.Reason;
import org.moultwright.domain.ReadingSeries;
import org.moultwright.store.H2Store;

/**
 * Three weeks on one wire, with clocks that are told: it is pulled a hundred times, the machine sleeps in between, and
 * its clock is set on and back. What was said is kept, once.
 */
class WeeksOfLoggingTest {
    private static final int UNPLUGS = 100;
    private static final Duration SLEPT = Duration.ofHours(6);
    private static final Duration SET_BACK = Duration.ofHours(-2);

    @TempDir
    Path folder;

    @Test
    void aHundredUnplugsSleepsAndClocksSetBothWaysLoseNothing() {
        ScriptedWire wire = new ScriptedWire();
        List<Double> said = new ArrayList<>();
        List<Duration> steps = new ArrayList<>();
        for (int i = 0; i < UNPLUGS; i++) {
            double celsius = 20 + i * 0.05;
            Duration step = i % 5 == 4 ? SET_BACK : SLEPT;
            wire.says(String.format(Locale.ROOT, "\r\n%.2f\r\n", celsius))
                    .clockIsSet(step)
                    .says(String.format(Locale.ROOT, "%.2f\r\n", celsius + 0.01))
                    .isPulledAndRefuses(i % 3 == 0 ? Reason.BUSY : Reason.MISSING, i % 7)
                    .says("5\r\n");
            said.add(rounded(celsius));
            said.add(rounded(celsius + 0.01));
            steps.add(step);
        }
        wire.run("plain-number");

        assertThat(wire.temperaturesCelsius()).isEqualTo(said);
        assertThat(wire.steps).isEqualTo(steps);
        assertThat(wire.opened).isEqualTo(UNPLUGS + 1);
        assertThat(wire.closed).isEqualTo(wire.opened);
        assertThat(wire.stateNames()).filteredOn("Lost"::equals).hasSize(UNPLUGS);
        try (H2Store store = H2Store.open(folder.resolve("room.store"))) {
            wire.heard.forEach(logged -> store.readings().append("P-1", List.of(logged)));
            ReadingSeries kept = store.readings().series("P-1", Instant.EPOCH, Instant.parse("2027-01-01T00:00:00Z"));
            List<Double> values = new ArrayList<>();
            kept.forEach(reading -> values.add(reading.temperatureCelsius()));
            assertThat(values).containsExactlyInAnyOrderElementsOf(said);
            assertThat(Duration.between(Instant.ofEpochMilli(kept.epochMillis(0)), last(kept)))
                    .isGreaterThan(Duration.ofDays(17));
        }
    }

    private static Instant last(ReadingSeries kept) {
        return Instant.ofEpochMilli(kept.epochMillis(kept.size() - 1));
    }

    private static double rounded(double celsius) {
        return Double.parseDouble(String.format(Locale.ROOT, "%.2f", celsius));
    }
}
