package org.moultwright.compute.alarm;

/** What one observation says of what an alarm warns of. */
public enum Sign {
    /** Beyond the limit. */
    EXCEEDED,
    /** Within the limit, but by less than the deadband. */
    BETWEEN,
    /** Within the limit by more than the deadband. */
    CLEAR,
    /** Nothing was observed. */
    UNKNOWN
}
