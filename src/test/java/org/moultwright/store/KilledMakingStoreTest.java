package org.moultwright.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.api.io.TempDir;

/**
 * A program that makes one new store after another is killed without warning, again and again. Every store
 * it was told is made must be there, and the one it was making must be there whole or be made anew.
 */
class KilledMakingStoreTest {
    private static final int KILLS = 25;
    private static final long SEED = 20260303;

    /** Longer than the making of the first store takes, which loads the database. */
    private static final int MOST_MILLIS_AFTER_BEGIN = 900;

    @TempDir
    Path folder;

    @Test
    void aStoreWhoseMakingWasKilledIsThereWholeOrMadeAnew(TestReporter reporter)
            throws IOException, InterruptedException {
        SplittableRandom random = new SplittableRandom(SEED);
        int cutShort = 0;
        for (int kill = 0; kill < KILLS; kill++) {
            Path room = Files.createDirectory(folder.resolve("room-" + kill));
            int made = runUntilKilled(room, random.nextInt(MOST_MILLIS_AFTER_BEGIN));
            cutShort += Files.exists(StoreMaker.store(room, made)) ? 0 : 1;
            for (int number = 0; number <= made; number++) {
                assertThat(Files.exists(StoreMaker.store(room, number)) || number == made)
                        .as("kill %d, seed %d: store %d", kill, SEED, number)
                        .isTrue();
                try (H2Store store = H2Store.open(StoreMaker.store(room, number))) {
                    assertThat(store.check().problems()).isEmpty();
                }
            }
        }
        assertThat(cutShort).as("kills that fell into a making").isPositive();
        reporter.publishEntry(KILLS + " kills, makings cut short and done anew", "" + cutShort);
    }

    /** How many stores were acknowledged. */
    private static int runUntilKilled(Path room, int millisAfterBegin) throws IOException, InterruptedException {
        Process maker = ChildJvm.start(StoreMaker.class, room.toString());
        try (BufferedReader said =
                new BufferedReader(new InputStreamReader(maker.getInputStream(), StandardCharsets.UTF_8))) {
            assertThat(said.readLine()).isEqualTo(StoreMaker.BEGIN);
            assertThat(maker.waitFor(millisAfterBegin, TimeUnit.MILLISECONDS)).isFalse();
            maker.toHandle().destroyForcibly();
            int made = (int) said.lines().filter(StoreMaker.MADE::equals).count();
            maker.waitFor();
            return made;
        } finally {
            maker.destroyForcibly();
        }
    }
}
