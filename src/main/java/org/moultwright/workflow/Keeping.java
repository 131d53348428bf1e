package org.moultwright.workflow;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.moultwright.workflow.ReadingLog.Logged;

/**
 * Brings what happens on a probe's wire to the disk and then to the listener, in order.
 *
 * <p>Where readings cannot be kept they wait, and are tried again from time to time; the rest is told at once.
 * For one thread.
 */
final class Keeping {
    /** Ten days at a reading in ten seconds, and a few ten megabytes. */
    private static final int MOST_WAITING = 86_400;

    private final ReadingSink log;
    private final String probe;
    private final LogListener listener;
    private final long pauseNanos;
    private final List<Happening> waiting = new ArrayList<>();
    private boolean failing;
    private long failedAtNanos;
    private int lost;

    /** @param pause how long to wait after a failure before the next attempt */
    Keeping(ReadingSink log, String probe, LogListener listener, Duration pause) {
        this.log = log;
        this.probe = probe;
        this.listener = listener;
        this.pauseNanos = pause.toNanos();
    }

    /** How long nothing need be done here if nothing happens. */
    long idleNanos() {
        return failing ? Math.max(0, pauseNanos - (System.nanoTime() - failedAtNanos)) : Long.MAX_VALUE;
    }

    /** Takes in what happened, and brings it on its way if it is time to. */
    void settle(List<Happening> batch) {
        waiting.addAll(batch);
        if (idleNanos() == 0 || !failing) {
            try {
                settleAll();
            } catch (AdvisedException e) {
                failed(e);
            }
        }
        if (failing) {
            tellAllButReadings();
            giveUpBeyond(MOST_WAITING);
        }
    }

    /**
     * Takes in what happened last, and brings all on its way.
     *
     * @throws AdvisedException if readings cannot be kept even now; they are lost
     */
    void settleLast(List<Happening> batch) {
        waiting.addAll(batch);
        try {
            settleAll();
        } catch (AdvisedException e) {
            tellAllButReadings();
            listener.lost(lost + waiting.size());
            throw e;
        }
    }

    private void settleAll() {
        List<Logged> heard = waiting.stream()
                .filter(Heard.class::isInstance)
                .map(happening -> ((Heard) happening).logged())
                .toList();
        List<Logged> kept = heard.isEmpty() ? heard : log.append(probe, heard);
        if (failing && !heard.isEmpty()) {
            failing = false;
            listener.keptAgain(heard.size());
            if (lost > 0) {
                listener.lost(lost);
                lost = 0;
            }
        }
        List<Happening> settled = List.copyOf(waiting);
        waiting.clear();
        int next = 0;
        for (Happening happening : settled) {
            if (happening instanceof Told told) {
                told.telling().accept(listener);
            } else {
                listener.heard(kept.get(next++));
            }
        }
    }

    private void failed(AdvisedException fault) {
        failedAtNanos = System.nanoTime();
        if (!failing) {
            failing = true;
            listener.notKept(fault);
        }
    }

    private void tellAllButReadings() {
        List<Happening> told = waiting.stream().filter(Told.class::isInstance).toList();
        waiting.removeIf(Told.class::isInstance);
        told.forEach(happening -> ((Told) happening).telling().accept(listener));
    }

    private void giveUpBeyond(int most) {
        int tooMany = Math.max(0, waiting.size() - most);
        waiting.subList(0, tooMany).clear();
        lost += tooMany;
    }

    /** Something on the wire. */
    sealed interface Happening {}

    /** A reading, to be told once it is kept. */
    record Heard(Logged logged) implements Happening {}

    /** Anything else, to be told in its turn. */
    record Told(Consumer<LogListener> telling) implements Happening {}
}
