package org.moultwright.compute.stage;

/**
 * Where a tray stood at one boundary at a look that counted it.
 *
 * @param age age at the look, in warm-days
 * @param passed animals that had passed by then, whatever became of them since
 * @param waiting animals alive that had not
 */
public record PassingState(double age, double passed, double waiting) {}
