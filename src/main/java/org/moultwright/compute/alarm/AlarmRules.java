package org.moultwright.compute.alarm;

import java.time.Duration;
import java.util.EnumMap;
import java.util.Map;
import org.moultwright.domain.AlarmKind;
import org.moultwright.domain.AlarmLimits;
import org.moultwright.domain.Require;

/**
 * The usual rules for a container of broods.
 *
 * <p>Limits of temperature are common practice of the trade and have no source; delays and the rest are ours,
 * with their reasons and what they were tried on in docs/methods/alarms.md. What a limit means: of
 * temperatures °C; of rate the K moved in {@link #RATE_MINUTES}; of silence and stuck the seconds; of drift the
 * cumulative sum in K quarter-hours; of condensation nothing: its value is the wall less the dew point in K, and
 * {@link org.moultwright.compute.psychro.WallState} decides, which allows for the uncertainty of both.
 */
public final class AlarmRules {
    public static final int RATE_MINUTES = 20;

    private static final double LEAST_DEADBAND_CELSIUS = 0.3;
    private static final int DEADBAND_SDS = 3;
    private static final double RATE_CELSIUS = 1.5;
    private static final double RATE_DEADBAND_CELSIUS = 0.5;
    private static final double DRIFT_SUM = 4.8;
    private static final Duration STUCK_FOR = Duration.ofHours(3);
    private static final Duration LEAST_SILENCE = Duration.ofSeconds(60);
    private static final int SILENT_PERIODS = 3;
    private static final Duration SETTLING = Duration.ofHours(2);
    private static final Duration OFF_DELAY = Duration.ofSeconds(60);
    private static final Duration RATE_ON_DELAY = Duration.ofMinutes(15);
    private static final Duration SOON = Duration.ofMinutes(10);
    private static final Duration LATER = Duration.ofMinutes(30);

    private AlarmRules() {}

    /**
     * The usual settings.
     *
     * @param period how often the probe reports, above 0
     * @param probeSdCelsius the probe's standard uncertainty
     */
    public static WatchSettings usual(Duration period, double probeSdCelsius) {
        return within(AlarmLimits.USUAL, period, probeSdCelsius);
    }

    /** The usual settings within other limits of temperature; the rest as in {@link #usual}. */
    public static WatchSettings within(AlarmLimits limits, Duration period, double probeSdCelsius) {
        Require.that(!period.isNegative() && !period.isZero(), "period is " + period + " but must be above 0");
        double deadband = Math.max(LEAST_DEADBAND_CELSIUS, DEADBAND_SDS * probeSdCelsius);
        Duration gap = longestGap(period);
        Map<AlarmKind, AlarmRule> rules = new EnumMap<>(AlarmKind.class);
        for (AlarmKind kind : AlarmKind.values()) {
            rules.put(
                    kind,
                    new AlarmRule(
                            kind,
                            limit(kind, limits, gap),
                            deadband(kind, deadband),
                            onDelay(kind),
                            kind == AlarmKind.CONDENSATION ? SOON : offDelay(kind),
                            gap,
                            escalateAfter(kind)));
        }
        return new WatchSettings(rules, gap, SETTLING, RATE_MINUTES, DriftSettings.USUAL);
    }

    /** How long a probe that reports so often may say nothing before it counts as silent. */
    public static Duration longestGap(Duration period) {
        Duration periods = period.multipliedBy(SILENT_PERIODS);
        return periods.compareTo(LEAST_SILENCE) > 0 ? periods : LEAST_SILENCE;
    }

    private static double limit(AlarmKind kind, AlarmLimits limits, Duration silence) {
        return switch (kind) {
            case HIGH -> limits.highCelsius();
            case VERY_HIGH -> limits.veryHighCelsius();
            case LOW -> limits.lowCelsius();
            case VERY_LOW -> limits.veryLowCelsius();
            case RATE -> RATE_CELSIUS;
            case SILENT -> silence.toSeconds();
            case STUCK -> STUCK_FOR.toSeconds();
            case DRIFT -> DRIFT_SUM;
            case CONDENSATION -> 0;
        };
    }

    private static double deadband(AlarmKind kind, double ofTemperature) {
        return switch (kind) {
            case HIGH, VERY_HIGH, LOW, VERY_LOW -> ofTemperature;
            case RATE -> RATE_DEADBAND_CELSIUS;
            case DRIFT -> DRIFT_SUM / 2;
            case SILENT, STUCK, CONDENSATION -> 0;
        };
    }

    private static Duration onDelay(AlarmKind kind) {
        return switch (kind) {
            case HIGH, LOW -> Duration.ofMinutes(5);
            case VERY_HIGH, VERY_LOW -> Duration.ofSeconds(60);
            case RATE -> RATE_ON_DELAY;
            case SILENT, STUCK, DRIFT -> Duration.ZERO;
            case CONDENSATION -> LATER;
        };
    }

    /** One reading is enough to know that a probe speaks, or moves. */
    private static Duration offDelay(AlarmKind kind) {
        return kind == AlarmKind.SILENT || kind == AlarmKind.STUCK ? Duration.ZERO : OFF_DELAY;
    }

    private static Duration escalateAfter(AlarmKind kind) {
        return switch (kind) {
            case VERY_HIGH, VERY_LOW, SILENT -> SOON;
            case HIGH, LOW, RATE, STUCK, DRIFT, CONDENSATION -> LATER;
        };
    }
}
