package org.moultwright.ui.shell;

/**
 * A key and what it does.
 *
 * @param key as written on a key cap, such as "Ctrl + 1"
 * @param does in a few words, such as "next field"
 */
public record KeyHint(String key, String does) {}
