package org.moultwright.ui.broods;

import java.nio.file.Path;
import org.moultwright.domain.AssumedTimings;
import org.moultwright.ui.shell.SaveLine;
import org.moultwright.workflow.StateBelief;
import org.moultwright.workflow.UndoDeed;

/**
 * What a keeper's belief about a brood's timing is kept and explained with.
 *
 * @param belief keeps it
 * @param undo takes the last deed back
 * @param saveLine is told what was saved
 * @param assumed holds where nothing is believed
 * @param ownFile where the keeper's own assumptions stand or would stand
 */
public record BeliefWays(StateBelief belief, UndoDeed undo, SaveLine saveLine, AssumedTimings assumed, Path ownFile) {}
