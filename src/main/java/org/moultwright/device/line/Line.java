package org.moultwright.device.line;

/**
 * What stood between two line ends.
 *
 * @param text its bytes as ISO-8859-1, without NUL
 * @param whole whether all of it is here; one that grew too long is cut and must not be read
 */
public record Line(String text, boolean whole) {}
