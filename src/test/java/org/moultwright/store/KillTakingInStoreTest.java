package org.moultwright.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A program that takes a file of readings in and back again is killed in the midst: all of it is there, or nothing. */
class KillTakingInStoreTest {
    private static final int KILLS = 8;
    private static final long SEED = 20260503;
    private static final int MOST_MILLIS = 400;
    private static final Instant LATER = Instant.parse("2100-01-01T00:00:00Z");

    @TempDir
    Path folder;

    @Test
    void aFileIsInWithItsDeedOrOutWithoutIt() throws IOException, InterruptedException {
        Path file = folder.resolve("room.store");
        SplittableRandom random = new SplittableRandom(SEED);
        for (int kill = 0; kill < KILLS; kill++) {
            List<String> said = runUntilKilled(file, random.nextInt(MOST_MILLIS));
            try (H2Store store = H2Store.open(file)) {
                assertThat(store.check().problems()).as("kill %d", kill).isEmpty();
                int readings = store.readings()
                        .series(FileTaker.PROBE, Instant.EPOCH, LATER)
                        .size();
                boolean isIn = !store.book().latestDeeds(1).isEmpty();
                assertThat(readings).as("kill %d after %s", kill, said).isEqualTo(isIn ? FileTaker.READINGS : 0);
            }
        }
    }

    private static List<String> runUntilKilled(Path file, int millis) throws IOException, InterruptedException {
        Process taker = ChildJvm.start(FileTaker.class, file.toString());
        List<String> said = new ArrayList<>();
        try (BufferedReader lines =
                new BufferedReader(new InputStreamReader(taker.getInputStream(), StandardCharsets.UTF_8))) {
            said.add(lines.readLine());
            assertThat(taker.waitFor(millis, TimeUnit.MILLISECONDS)).isFalse();
            taker.toHandle().destroyForcibly();
            lines.lines().forEach(said::add);
            taker.waitFor();
        } finally {
            taker.destroyForcibly();
        }
        assertThat(said).first().isEqualTo(FileTaker.OUT);
        return said;
    }
}
