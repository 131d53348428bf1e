package org.moultwright.ui.shell;

import org.moultwright.ui.control.Tone;

/**
 * Something the keeper should know, whatever screen is open.
 *
 * @param tone how urgent
 * @param sentence what has happened
 * @param remedy what to do about it, possibly empty
 */
public record Notice(Tone tone, String sentence, String remedy) {}
