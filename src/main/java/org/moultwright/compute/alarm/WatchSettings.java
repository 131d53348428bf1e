package org.moultwright.compute.alarm;

import java.time.Duration;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.moultwright.domain.AlarmKind;
import org.moultwright.domain.Require;

/**
 * What one container is watched for.
 *
 * @param rules by kind; a kind without a rule is out of service
 * @param longestGap readings further apart than this say nothing of the time between them
 * @param settling after the start and after a change of the set-point neither rate nor drift is judged for so long
 * @param rateMinutes over how many minutes the rate is told
 * @param drift how drift is told from habit
 */
public record WatchSettings(
        Map<AlarmKind, AlarmRule> rules, Duration longestGap, Duration settling, int rateMinutes, DriftSettings drift) {
    public WatchSettings {
        rules = Map.copyOf(rules);
        rules.forEach(
                (kind, rule) -> Require.that(rule.kind() == kind, "the rule of " + kind + " is of " + rule.kind()));
        Require.atLeast("rateMinutes", rateMinutes, 1);
    }

    public Optional<AlarmRule> rule(AlarmKind kind) {
        return Optional.ofNullable(rules.get(kind));
    }

    /** These settings with another rule. */
    public WatchSettings with(AlarmRule rule) {
        Map<AlarmKind, AlarmRule> others = new EnumMap<>(AlarmKind.class);
        others.putAll(rules);
        others.put(rule.kind(), rule);
        return new WatchSettings(others, longestGap, settling, rateMinutes, drift);
    }

    /** These settings with a kind taken out of service. */
    public WatchSettings without(AlarmKind kind) {
        Map<AlarmKind, AlarmRule> others = new EnumMap<>(AlarmKind.class);
        others.putAll(rules);
        others.remove(kind);
        return new WatchSettings(others, longestGap, settling, rateMinutes, drift);
    }
}
