package org.moultwright.device.line;

/**
 * One record of a stream, such as what stood between two line ends.
 *
 * @param text its bytes as ISO-8859-1
 * @param whole whether all of it is here; one that was cut or grew too long must not be read
 */
public record Line(String text, boolean whole) {}
