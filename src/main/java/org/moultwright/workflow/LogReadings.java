package org.moultwright.workflow;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import org.moultwright.domain.Require;
import org.moultwright.workflow.ReadingLog.Logged;

/**
 * Keeps what one probe says until it is told to stop, through every fault of the wire.
 *
 * <p>What arrives while the disk is busy is kept together in one go. The listener is told on the logging
 * thread, of a reading only once the reading log has it on disk. One of these logs once.
 */
public final class LogReadings {
    private static final Happening STOP = new Happening(Optional.empty(), listener -> {});

    private final ReadingLog log;
    private final String probe;
    private final ProbeListener whenKept;
    private final BlockingQueue<Happening> happenings = new LinkedBlockingQueue<>();

    public LogReadings(ReadingLog log, String probe, ProbeListener whenKept) {
        this.log = log;
        this.probe = Require.text("probe", probe);
        this.whenKept = whenKept;
    }

    /**
     * Logs until {@code lasting} is over or {@link #stop} is called; all that was heard by then is on disk when
     * this returns. An interrupt ends it in the same way and is passed on.
     *
     * @param lasting how long to log, or empty for until it is stopped
     * @throws IllegalArgumentException if there is no such profile
     */
    public void run(ProbeLinks links, ProbeLine line, Optional<Duration> lasting) {
        ProbeLinks.Link link = links.open(line, new Intake());
        boolean interrupted;
        try {
            interrupted = logUntilOver(lasting);
        } finally {
            link.close();
        }
        List<Happening> rest = new ArrayList<>();
        happenings.drainTo(rest);
        settle(rest);
        if (interrupted) {
            Thread.currentThread().interrupt();
        }
    }

    /** Ends the run soon, from any thread. */
    public void stop() {
        happenings.add(STOP);
    }

    /** Whether it ended by an interrupt. */
    private boolean logUntilOver(Optional<Duration> lasting) {
        long startedAtNanos = System.nanoTime();
        long lastingNanos = lasting.map(TimeUnit.NANOSECONDS::convert).orElse(Long.MAX_VALUE);
        try {
            boolean goingOn = true;
            while (goingOn) {
                long leftNanos = lastingNanos - (System.nanoTime() - startedAtNanos);
                Happening first = happenings.poll(leftNanos, TimeUnit.NANOSECONDS);
                goingOn = first != null && settleWith(first);
            }
            return false;
        } catch (InterruptedException e) {
            // The flag stays down until all is settled: a file channel used by an interrupted thread closes.
            return true;
        }
    }

    private boolean settleWith(Happening first) {
        List<Happening> batch = new ArrayList<>(List.of(first));
        happenings.drainTo(batch);
        settle(batch);
        return !batch.contains(STOP);
    }

    private void settle(List<Happening> batch) {
        List<Logged> heard =
                batch.stream().flatMap(happening -> happening.logged().stream()).toList();
        if (!heard.isEmpty()) {
            log.append(probe, heard);
        }
        batch.forEach(happening -> happening.telling().accept(whenKept));
    }

    private record Happening(Optional<Logged> logged, Consumer<ProbeListener> telling) {}

    /** Takes what the link's thread tells over to the logging thread. */
    private final class Intake implements ProbeListener {
        @Override
        public void heard(Logged logged) {
            happenings.add(new Happening(Optional.of(logged), listener -> listener.heard(logged)));
        }

        @Override
        public void changed(LinkState state) {
            happenings.add(new Happening(Optional.empty(), listener -> listener.changed(state)));
        }

        @Override
        public void clockStepped(Instant seenAt, Duration by) {
            happenings.add(new Happening(Optional.empty(), listener -> listener.clockStepped(seenAt, by)));
        }
    }
}
