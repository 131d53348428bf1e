package org.moultwright.device.serial;

import static org.assertj.core.api.Assertions.fail;

import java.time.Duration;
import java.util.concurrent.locks.LockSupport;
import java.util.function.BooleanSupplier;

/** Waits for something to become true. */
final class Await {
    private static final Duration LONGEST = Duration.ofSeconds(20);

    private Await() {}

    static void until(String what, BooleanSupplier holds) {
        long startedAtNanos = System.nanoTime();
        while (!holds.getAsBoolean()) {
            if (System.nanoTime() - startedAtNanos > LONGEST.toNanos()) {
                fail("waited %s until %s", LONGEST, what);
            }
            LockSupport.parkNanos(5_000_000);
        }
    }
}
