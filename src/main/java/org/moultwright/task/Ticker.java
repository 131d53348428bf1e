package org.moultwright.task;

import java.time.Duration;
import java.util.Timer;
import java.util.TimerTask;

/** Does something every so often on a thread of its own, which does not keep the program alive. */
public final class Ticker implements AutoCloseable {
    private final Timer timer;

    /**
     * @param name of the thread
     * @param pause from the start of one tick to the next, or longer where a tick takes longer
     * @param tick must not throw: the first that does is the last
     */
    public Ticker(String name, Duration pause, Runnable tick) {
        this.timer = new Timer(name, true);
        TimerTask task = new TimerTask() {
            @Override
            public void run() {
                tick.run();
            }
        };
        timer.schedule(task, pause.toMillis(), pause.toMillis());
    }

    /** No tick begins after this. */
    @Override
    public void close() {
        timer.cancel();
    }
}
