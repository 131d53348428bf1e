package org.moultwright.compute.alarm;

/**
 * How long the limit was seen exceeded, or clear, without a break.
 *
 * <p>Only time between two observations that say the same and are near each other counts: silence neither
 * completes a delay nor ends it.
 *
 * @param last what was observed last
 * @param exceededMillis how long it was seen exceeded
 * @param clearMillis how long it was seen clear
 * @param silentMillis how long ago that was
 */
public record Delays(Sign last, long exceededMillis, long clearMillis, long silentMillis) {
    static final Delays NONE = new Delays(Sign.UNKNOWN, 0, 0, 0);

    Delays after(AlarmRule rule, Sign sign, long elapsedMillis) {
        long apart = silentMillis + elapsedMillis;
        if (sign == Sign.UNKNOWN) {
            return new Delays(last, exceededMillis, clearMillis, apart);
        }
        long counted = sign == last && apart <= rule.longestGap().toMillis() ? apart : 0;
        return new Delays(
                sign,
                sign == Sign.EXCEEDED && sign == last ? exceededMillis + counted : 0,
                sign == Sign.CLEAR && sign == last ? clearMillis + counted : 0,
                0);
    }

    boolean raises(AlarmRule rule) {
        return last == Sign.EXCEEDED && exceededMillis >= rule.onDelay().toMillis();
    }

    boolean clears(AlarmRule rule) {
        return last == Sign.CLEAR && clearMillis >= rule.offDelay().toMillis();
    }
}
