package org.moultwright.compute.alarm;

import java.util.List;
import org.moultwright.compute.psychro.CondensationRisk;
import org.moultwright.compute.psychro.WallState;
import org.moultwright.domain.AlarmKind;

/**
 * What a watch remembers of the past to tell silence, a stuck probe, rate and drift. All by the steady clock,
 * counted from the start of the watch.
 *
 * @param steadyMillis how long it has watched
 * @param lastSampleMillis when the last good reading came; the start before any came
 * @param setPointCelsius what the container was set to last, NaN before anybody knew
 * @param settledMillis from when on rate and drift are judged
 */
public record Senses(
        long steadyMillis,
        long lastSampleMillis,
        double setPointCelsius,
        long settledMillis,
        StuckSense stuck,
        RateSense rate,
        DriftSense drift) {
    static final Senses START =
            new Senses(0, 0, Double.NaN, Long.MIN_VALUE, StuckSense.START, RateSense.START, DriftSense.START);

    private static final double MILLIS_PER_SECOND = 1000;

    Senses after(WatchSettings settings, Observation observed) {
        long now = steadyMillis + observed.elapsedMillis();
        if (observed.sample().isEmpty()) {
            return new Senses(now, lastSampleMillis, setPointCelsius, settledMillis, stuck, rate, drift);
        }
        Observation.Sample sample = observed.sample().get();
        return isOtherwiseSet(sample)
                ? reset(settings, sample, now).heard(settings, sample, now)
                : heard(settings, sample, now);
    }

    /** The value of a kind, NaN where the observation tells none. */
    double value(WatchSettings settings, AlarmKind kind, Observation observed) {
        if (kind == AlarmKind.SILENT) {
            return (steadyMillis - lastSampleMillis) / MILLIS_PER_SECOND;
        }
        if (observed.sample().isEmpty()) {
            return Double.NaN;
        }
        return switch (kind) {
            case HIGH, VERY_HIGH, LOW, VERY_LOW -> observed.sample().get().celsius();
            case RATE -> steadyMillis < settledMillis ? Double.NaN : rate.movedCelsius(settings.rateMinutes());
            case STUCK -> stuck.unchangedMillis() / MILLIS_PER_SECOND;
            case DRIFT -> drift.sum(settings.drift());
            case CONDENSATION ->
                observed.sample()
                        .get()
                        .wall()
                        .map(CondensationRisk::aboveDewPointCelsius)
                        .orElse(Double.NaN);
            case SILENT -> Double.NaN;
        };
    }

    Sign sign(AlarmRule rule, double value, Observation observed) {
        if (rule.kind() != AlarmKind.CONDENSATION) {
            return rule.sign(value);
        }
        return observed.sample()
                .flatMap(Observation.Sample::wall)
                .map(CondensationRisk::state)
                .map(Senses::signOf)
                .orElse(Sign.UNKNOWN);
    }

    /**
     * What the senses know after readings of the past and then a pause in which nobody listened. Silence is
     * counted from its end on.
     *
     * @param past in order of time, each with the time since the one before
     * @param pauseMillis from the last of them until now
     */
    static Senses through(WatchSettings settings, List<Observation> past, long pauseMillis) {
        Senses senses = START;
        for (Observation observed : past) {
            senses = senses.after(settings, observed);
        }
        long now = senses.steadyMillis + pauseMillis;
        boolean isGap = pauseMillis > settings.longestGap().toMillis();
        return new Senses(
                now,
                now,
                senses.setPointCelsius,
                senses.settledMillis,
                isGap ? StuckSense.START : senses.stuck,
                senses.rate,
                senses.drift);
    }

    Senses relearningHabit() {
        return new Senses(
                steadyMillis, lastSampleMillis, setPointCelsius, settledMillis, stuck, rate, DriftSense.START);
    }

    private boolean isOtherwiseSet(Observation.Sample sample) {
        return Double.compare(sample.setPointCelsius(), setPointCelsius) != 0;
    }

    private Senses reset(WatchSettings settings, Observation.Sample sample, long now) {
        return new Senses(
                steadyMillis,
                lastSampleMillis,
                sample.setPointCelsius(),
                now + settings.settling().toMillis(),
                stuck,
                rate,
                drift.settling());
    }

    private Senses heard(WatchSettings settings, Observation.Sample sample, long now) {
        long apart = now - lastSampleMillis;
        long gap = settings.longestGap().toMillis();
        boolean isSettled = now >= settledMillis && !Double.isNaN(sample.setPointCelsius());
        return new Senses(
                now,
                now,
                setPointCelsius,
                settledMillis,
                stuck.after(sample, apart, gap),
                rate.after(sample.celsius(), now, settings.rateMinutes()),
                isSettled
                        ? drift.after(
                                sample.celsius() - sample.setPointCelsius(),
                                now,
                                Math.min(apart, gap),
                                settings.drift())
                        : drift);
    }

    private static Sign signOf(WallState wall) {
        return switch (wall) {
            case WILL_WET -> Sign.EXCEEDED;
            case MAY_WET -> Sign.BETWEEN;
            case DRY -> Sign.CLEAR;
        };
    }
}
