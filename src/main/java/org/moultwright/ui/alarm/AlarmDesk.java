package org.moultwright.ui.alarm;

import java.time.Duration;
import java.time.InstantSource;
import java.util.function.Consumer;
import java.util.function.LongSupplier;
import org.moultwright.task.Runner;
import org.moultwright.text.DayWords;

/**
 * All that the alarm banner works with.
 *
 * @param acknowledge writes down that the keeper has seen what there is
 * @param snooze writes down that the keeper wants quiet for so long
 * @param runner does so aside
 * @param sound plays the tone once and returns at once
 * @param steadyNanos the steady clock, by which the tone is repeated
 * @param clock says how old a reading is
 * @param days the keeper's days
 */
public record AlarmDesk(
        Runnable acknowledge,
        Consumer<Duration> snooze,
        Runner runner,
        Runnable sound,
        LongSupplier steadyNanos,
        InstantSource clock,
        DayWords days) {}
