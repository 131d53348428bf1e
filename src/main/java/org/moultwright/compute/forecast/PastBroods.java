package org.moultwright.compute.forecast;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.moultwright.compute.stage.StageFit;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.Check;
import org.moultwright.domain.RateForm;
import org.moultwright.domain.Stage;

/**
 * Completed broods to learn from. What each teaches is worked out once for each way of asking and kept.
 *
 * <p>Safe to share; the broods never change.
 */
public final class PastBroods {
    /** None to learn from. */
    public static final PastBroods NONE = PastBroods.of(List.of());

    private final List<BroodRecord> records;
    private final Map<Question, Lessons> lessons = new ConcurrentHashMap<>();

    private PastBroods(List<BroodRecord> records) {
        this.records = records.stream()
                .sorted(Comparator.comparing(record -> lastLook(record).orElse(Instant.MIN)))
                .toList();
    }

    public static PastBroods of(List<BroodRecord> records) {
        return new PastBroods(records);
    }

    /** What lessons depend on: ages count by one rate curve, from one belief as sure as it is, to the same boundaries. */
    private record Question(
            List<Stage> boundaries,
            List<Double> medians,
            double batchSd,
            double stageSd,
            RateForm rate,
            double referenceCelsius) {}

    Lessons lessons(Belief belief, List<Stage> boundaries, double referenceCelsius) {
        List<Double> medians = new ArrayList<>();
        for (double median : belief.medianWarmDays()) {
            medians.add(median);
        }
        return lessons.computeIfAbsent(
                new Question(boundaries, medians, belief.batchSd(), belief.stageSd(), belief.rate(), referenceCelsius),
                question -> learned(belief, boundaries));
    }

    private Lessons learned(Belief belief, List<Stage> boundaries) {
        List<BroodSight> taught = new ArrayList<>();
        List<Lessons> before = new ArrayList<>();
        Lessons lessons = Lessons.NONE;
        for (BroodRecord record : records) {
            Optional<BroodSight> sight = atLastLook(record, belief, boundaries);
            if (sight.isPresent()) {
                taught.add(sight.get());
                before.add(lessons);
                lessons = lessons.and(
                        StageFit.of(
                                sight.get().usableHistories(),
                                belief.vague(sight.get().startingAge().halfWidthWarmDays())),
                        LifeTable.of(sight.get().trays(), belief.medianWarmDays()[0]));
            }
        }
        return lessons.withWidthFactor(new Hindsight(belief, boundaries).widthFactor(taught, before));
    }

    /** Empty where the brood has neither date nor animal. */
    private static Optional<BroodSight> atLastLook(BroodRecord record, Belief belief, List<Stage> boundaries) {
        return lastLook(record)
                .flatMap(at -> BroodSight.of(record, at, boundaries, belief))
                .filter(sight -> !sight.usableTrays().isEmpty());
    }

    private static Optional<Instant> lastLook(BroodRecord record) {
        return record.checks().stream().map(Check::at).max(Comparator.naturalOrder());
    }
}
