package org.moultwright.workflow;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.moultwright.domain.Require;
import org.moultwright.workflow.Keeping.Happening;
import org.moultwright.workflow.Keeping.Heard;
import org.moultwright.workflow.Keeping.Told;
import org.moultwright.workflow.ReadingLog.Logged;

/**
 * Keeps what one probe says until it is told to stop, through every fault of the wire.
 *
 * <p>What arrives while the disk is busy is kept together in one go. The listener is told on the logging
 * thread, of a reading only once the reading log has it on disk. Where it cannot be kept, as on a full disk, it
 * waits and is tried again. One of these logs once.
 */
public final class LogReadings {
    /** How long to wait before it is tried again to keep what could not be kept. */
    public static final Duration USUAL_PAUSE = Duration.ofSeconds(5);

    /** Nobody sees a wait so short; a reading that comes after a longer pause does not wait at all. */
    private static final Duration BETWEEN_TRANSACTIONS = Duration.ofMillis(250);

    private static final Happening STOP = new Told(listener -> {});

    private final Keeping keeping;
    private final BlockingQueue<Happening> happenings = new LinkedBlockingQueue<>();
    private final CountDownLatch stopping = new CountDownLatch(1);
    private long settledAtNanos;

    public LogReadings(ReadingSink log, String probe, LogListener listener) {
        this(log, probe, listener, USUAL_PAUSE);
    }

    /** @param pause how long to wait before it is tried again to keep what could not be kept */
    public LogReadings(ReadingSink log, String probe, LogListener listener, Duration pause) {
        this.keeping = new Keeping(log, Require.text("probe", probe), listener, pause);
    }

    /**
     * Logs until {@code lasting} is over or {@link #stop} is called; all that was heard by then is on disk when
     * this returns. An interrupt ends it in the same way and is passed on.
     *
     * @param lasting how long to log, or empty for until it is stopped
     * @throws IllegalArgumentException if there is no such profile
     * @throws AdvisedException if at the end there are readings that cannot be kept
     */
    public void run(ProbeLinks links, ProbeLine line, Optional<Duration> lasting) {
        ProbeLinks.Link link = links.open(line, new Intake());
        boolean interrupted;
        try {
            interrupted = logUntilOver(lasting);
        } finally {
            link.close();
        }
        try {
            keeping.settleLast(drained());
        } finally {
            if (interrupted) {
                Thread.currentThread().interrupt();
            }
        }
    }

    /** Ends the run soon, from any thread. */
    public void stop() {
        happenings.add(STOP);
        stopping.countDown();
    }

    /** Whether it ended by an interrupt. */
    private boolean logUntilOver(Optional<Duration> lasting) {
        long startedAtNanos = System.nanoTime();
        settledAtNanos = startedAtNanos - BETWEEN_TRANSACTIONS.toNanos();
        long lastingNanos = lasting.map(TimeUnit.NANOSECONDS::convert).orElse(Long.MAX_VALUE);
        try {
            long leftNanos = lastingNanos;
            boolean stopped = false;
            while (leftNanos > 0 && !stopped) {
                awaitTurn(leftNanos);
                Happening first = happenings.poll(Math.min(leftNanos, keeping.idleNanos()), TimeUnit.NANOSECONDS);
                List<Happening> batch =
                        new ArrayList<>(Optional.ofNullable(first).stream().toList());
                happenings.drainTo(batch);
                keeping.settle(batch);
                settledAtNanos = System.nanoTime();
                stopped = batch.contains(STOP);
                leftNanos = lastingNanos - (System.nanoTime() - startedAtNanos);
            }
            return false;
        } catch (InterruptedException e) {
            // The flag stays down until all is settled: a file channel used by an interrupted thread closes.
            return true;
        }
    }

    /** A transaction costs much the same for one reading or for hundreds, so that they are not begun too often. */
    private void awaitTurn(long leftNanos) throws InterruptedException {
        long pauseNanos = BETWEEN_TRANSACTIONS.toNanos() - (System.nanoTime() - settledAtNanos);
        if (pauseNanos > 0) {
            stopping.await(Math.min(pauseNanos, leftNanos), TimeUnit.NANOSECONDS);
        }
    }

    private List<Happening> drained() {
        List<Happening> rest = new ArrayList<>();
        happenings.drainTo(rest);
        return rest;
    }

    /** Takes what the link's thread tells over to the logging thread. */
    private final class Intake implements ProbeListener {
        @Override
        public void heard(Logged logged) {
            happenings.add(new Heard(logged));
        }

        @Override
        public void changed(LinkState state) {
            happenings.add(new Told(listener -> listener.changed(state)));
        }

        @Override
        public void identified(ProbeIdentity identity) {
            happenings.add(new Told(listener -> listener.identified(identity)));
        }

        @Override
        public void alsoHeard(ProbeIdentity identity) {
            happenings.add(new Told(listener -> listener.alsoHeard(identity)));
        }

        @Override
        public void clockStepped(Instant seenAt, Duration by) {
            happenings.add(new Told(listener -> listener.clockStepped(seenAt, by)));
        }
    }
}
