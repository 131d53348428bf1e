package org.moultwright.boot;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.HandReading;
import org.moultwright.domain.InventedBrood;
import org.moultwright.domain.ProbeStay;
import org.moultwright.domain.Quality;
import org.moultwright.domain.Reading;
import org.moultwright.domain.Span;
import org.moultwright.store.H2Store;

/** What reads the whole of a history needs no more memory the longer it is: here less than the readings alone would. */
class LongHistoryStoreTest {
    private static final Instant START = Instant.parse("2024-01-01T00:00:00Z");

    /** As a series in memory they are 56 MB. */
    private static final int READINGS = 2_000_000;

    private static final int MEGABYTES = 40;

    @TempDir
    Path folder;

    @Test
    void twoMillionReadingsAreWrittenOutAuditedAndRedressedInFortyMegabytes() throws IOException, InterruptedException {
        Path file = folder.resolve("room.store");
        fill(file);
        Path out = folder.resolve("out");
        Process reader = new ProcessBuilder(
                        ProcessHandle.current().info().command().orElse("java"),
                        "-Xmx" + MEGABYTES + "m",
                        "-XX:+UseSerialGC",
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("java.class.path"),
                        LongHistory.class.getName(),
                        file.toString(),
                        out.toString())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        try (BufferedReader said =
                new BufferedReader(new InputStreamReader(reader.getInputStream(), StandardCharsets.UTF_8))) {
            assertThat(said.lines()).containsExactly("readings 0", "check 0", "changed " + READINGS, "export 0");
        }
        assertThat(reader.waitFor()).isZero();
        try (Stream<String> lines = Files.lines(out.resolve("readings.csv"))) {
            assertThat(lines.count()).isEqualTo(READINGS + 1L);
        }
    }

    private static void fill(Path file) {
        ProbeStay stay =
                new ProbeStay(LongHistory.PROBE, "A1", new Span(START, Optional.empty()), 0, HandReading.SD_CELSIUS);
        BroodRecord brood = InventedBrood.measured(LongHistory.BROOD, START, List.of(stay));
        try (H2Store store = H2Store.open(file)) {
            store.book().takeIn(brood, sink -> {
                for (int number = 0; number < READINGS; number++) {
                    double celsius = (2600 + number % 97) / 100.0;
                    sink.accept(
                            LongHistory.PROBE, new Reading(START.plusSeconds(10L * number), celsius, 70, Quality.GOOD));
                }
            });
        }
    }
}
