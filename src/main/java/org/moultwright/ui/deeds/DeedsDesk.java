package org.moultwright.ui.deeds;

import org.moultwright.task.Runner;
import org.moultwright.text.DayWords;
import org.moultwright.workflow.UndoDeed;

/**
 * All that the sheet of deeds works with.
 *
 * @param undo lists what was written down and takes it back
 * @param whenTakenBack is told when something was taken back
 * @param runner does both aside
 * @param days the keeper's days
 */
public record DeedsDesk(UndoDeed undo, Runnable whenTakenBack, Runner runner, DayWords days) {}
