package org.moultwright.benchmark;

import com.sun.javafx.perf.PerformanceTracker;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import javafx.application.Platform;
import javafx.scene.Scene;
import org.moultwright.ui.ToolkitThread;

/**
 * When a window has shown what was done in it, as its keeper sees it: from the moment the work is begun on the
 * toolkit's thread to the moment the window has the pixels of the first frame that was laid out after it, the wait for
 * that frame's turn included. Only what changed is painted, as in use. Measured on a window that had come to rest.
 */
final class Presented {
    /** A window without a new frame for so long has nothing more to show, but a blinking caret. */
    private static final long QUIET_MILLIS = 150;

    private static final long LONGEST_MILLIS = 20_000;

    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    private final BlockingQueue<Long> frames = new LinkedBlockingQueue<>();
    private final long toolkitThread;
    private volatile long painterThread;
    private boolean isLaidOut;

    /** @param scene of a window that is shown */
    Presented(Scene scene) {
        this.toolkitThread = ToolkitThread.ask(() -> {
            scene.addPostLayoutPulseListener(() -> isLaidOut = true);
            // The painting thread has handed its pixels over by then; the window takes them on the toolkit's thread.
            PerformanceTracker.getSceneTracker(scene).setOnRenderedFrameTask(() -> {
                painterThread = Thread.currentThread().getId();
                Platform.runLater(() -> presented(System.nanoTime()));
            });
            return Thread.currentThread().getId();
        });
    }

    Shown after(Runnable work) {
        comeToRest();
        long[] began = ToolkitThread.ask(() -> {
            long[] now = {System.nanoTime(), spent(toolkitThread), spent(painterThread)};
            isLaidOut = false;
            frames.clear();
            work.run();
            return now;
        });
        Long first = next(LONGEST_MILLIS);
        comeToRest();
        double firstSeconds = first == null ? Double.NaN : (first - began[0]) / 1e9;
        return new Shown(
                firstSeconds, (spent(toolkitThread) - began[1]) / 1e9, (spent(painterThread) - began[2]) / 1e9);
    }

    /** How long the processor has worked for the thread that asks, in seconds. */
    static double worked() {
        return THREADS.getCurrentThreadCpuTime() / 1e9;
    }

    void comeToRest() {
        while (next(QUIET_MILLIS) != null) {
            frames.clear();
        }
    }

    /** The painter is not known before it has painted once. */
    private static long spent(long thread) {
        return thread == 0 ? 0 : Math.max(0, THREADS.getThreadCpuTime(thread));
    }

    private void presented(long nanos) {
        if (isLaidOut) {
            frames.add(nanos);
        }
    }

    private Long next(long longestMillis) {
        try {
            return frames.poll(longestMillis, TimeUnit.MILLISECONDS);
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(interrupted);
        }
    }

    /**
     * How long after the work was begun its first frame was presented, and how long the processor worked until the window
     * came to rest, for the toolkit's thread and for the one that paints.
     */
    record Shown(double firstSeconds, double toolkitSeconds, double painterSeconds) {}
}
