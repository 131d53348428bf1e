package org.moultwright.device.link;

import java.time.Duration;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/** Whether a link is to end. */
interface Ending {
    boolean hasCome();

    /** Waits so long, or less if the end comes. */
    void await(Duration longest) throws InterruptedException;

    /** An end that comes when somebody calls for it. */
    final class OnCall implements Ending {
        private final CountDownLatch called = new CountDownLatch(1);

        void call() {
            called.countDown();
        }

        @Override
        public boolean hasCome() {
            return called.getCount() == 0;
        }

        @Override
        public void await(Duration longest) throws InterruptedException {
            // Whether it came or the time is over is asked of hasCome().
            boolean unused = called.await(longest.toNanos(), TimeUnit.NANOSECONDS);
        }
    }
}
