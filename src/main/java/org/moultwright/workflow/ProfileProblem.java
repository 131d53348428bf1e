package org.moultwright.workflow;

/**
 * What is wrong with the text of a line profile.
 *
 * @param lineNumber where, from 1; 0 if it is the text as a whole
 * @param sentence what is wrong and what was expected
 */
public record ProfileProblem(int lineNumber, String sentence) {}
