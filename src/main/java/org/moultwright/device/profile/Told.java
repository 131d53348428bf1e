package org.moultwright.device.profile;

/**
 * A line as its profile reads it.
 *
 * @param decoded what it says
 * @param origin who says it
 */
public record Told(Decoded decoded, Origin origin) {
    static Told by(Decoded decoded) {
        return new Told(decoded, Origin.NONE);
    }

    static Told fault(FaultCause cause, Origin origin) {
        return new Told(new Decoded.Fault(cause), origin);
    }
}
