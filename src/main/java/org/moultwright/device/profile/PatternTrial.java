package org.moultwright.device.profile;

import java.time.Duration;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/**
 * Tries a profile on every beginning of its own test lines, against a clock.
 *
 * <p>Reading a line is bounded by how often a pattern looks at a character. At the very end of a line there is no
 * character left to look at, and there a pattern with many optional pieces in a row could still go back and forth
 * for hours; such a one shows here.
 */
final class PatternTrial {
    private static final Duration LONGEST = Duration.ofSeconds(2);

    private PatternTrial() {}

    static boolean isQuick(LineProfile profile) {
        CountDownLatch done = new CountDownLatch(1);
        Thread trial = new Thread(() -> run(profile, done), "trial of patterns");
        // A search cannot be interrupted: one that never ends must not keep the program alive.
        trial.setDaemon(true);
        trial.start();
        try {
            return done.await(LONGEST.toMillis(), TimeUnit.MILLISECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    private static void run(LineProfile profile, CountDownLatch done) {
        List<String> lines = profile.testLines();
        for (String line : lines) {
            for (int length = 0; length <= line.length(); length++) {
                profile.decode(line.substring(0, length));
            }
        }
        done.countDown();
    }
}
