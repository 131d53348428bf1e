package org.moultwright.device.profile;

/**
 * A line as its profile reads it.
 *
 * @param decoded what it says
 * @param origin who says it
 */
public record Told(Decoded decoded, Origin origin) {
    /** What it says and who, in the words of a profile's test lines. */
    String words() {
        return decoded.words() + (origin.mark().isEmpty() ? "" : " from " + origin.mark());
    }

    static Told by(Decoded decoded) {
        return new Told(decoded, Origin.NONE);
    }

    static Told fault(FaultCause cause, Origin origin) {
        return new Told(new Decoded.Fault(cause), origin);
    }
}
