package org.moultwright.benchmark;

import java.time.Instant;
import java.util.List;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.locks.LockSupport;
import org.moultwright.domain.Reading;
import org.moultwright.workflow.LinkState;
import org.moultwright.workflow.ProbeLine;
import org.moultwright.workflow.ProbeLinks;
import org.moultwright.workflow.ProbeListener;
import org.moultwright.workflow.ReadingLog.Logged;

/** A wire on which so many readings a second come, each at its own instant, until it is closed. */
final class SteadyLines implements ProbeLinks {
    private static final long PAUSE_NANOS = 10_000_000;

    private final int aSecond;
    private final AtomicLong said = new AtomicLong();

    SteadyLines(int aSecond) {
        this.aSecond = aSecond;
    }

    long said() {
        return said.get();
    }

    @Override
    public List<String> profiles() {
        return List.of();
    }

    @Override
    public Link open(ProbeLine line, ProbeListener listener) {
        Thread thread = new Thread(() -> speak(listener), "steady lines");
        thread.start();
        return () -> {
            thread.interrupt();
            try {
                thread.join();
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        };
    }

    private void speak(ProbeListener listener) {
        listener.changed(new LinkState.Live());
        InventedAir air = new InventedAir(Instant.now(), 1000 / aSecond, 0);
        long startNanos = System.nanoTime();
        while (!Thread.currentThread().isInterrupted()) {
            long due = (System.nanoTime() - startNanos) * aSecond / 1_000_000_000L;
            for (long number = said.get(); number < due; number++) {
                Reading reading = air.reading(1, number);
                listener.heard(new Logged(reading, InventedAir.rawLine(reading)));
                said.incrementAndGet();
            }
            LockSupport.parkNanos(PAUSE_NANOS);
        }
    }
}
