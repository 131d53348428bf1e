package org.moultwright.compute.stage;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.ToDoubleFunction;
import org.moultwright.compute.survival.Isotonic;
import org.moultwright.domain.Check;
import org.moultwright.domain.Look;
import org.moultwright.domain.Stage;

/**
 * Reads the checks of one tray for one boundary: how many had passed it at each look that tells, made to
 * never fall, and what the other looks said in between.
 */
final class BoundaryHistory {
    /** A sight among more is weighed as one among so many: that one of them had passed is as good as sure. */
    private static final int MOST_SIGHTED = 30_000;

    private final TrayFlow flow;
    private final List<Check> checks;
    private final Stage boundary;
    private final double animals;
    private final ToDoubleFunction<Instant> age;

    BoundaryHistory(TrayFlow flow, List<Check> checks, Stage boundary, double animals, ToDoubleFunction<Instant> age) {
        this.flow = flow;
        this.checks = checks;
        this.boundary = boundary;
        this.animals = animals;
        this.age = age;
    }

    BoundaryEvidence evidence() {
        List<Row> rows = rows();
        double[] passed =
                Isotonic.increasing(rows.stream().mapToDouble(Row::passed).toArray());
        List<PassingState> states = new ArrayList<>();
        List<Double> goneWaiting = new ArrayList<>();
        states.add(new PassingState(0, 0, animals));
        goneWaiting.add(0.0);
        for (int i = 0; i < passed.length; i++) {
            Instant at = rows.get(i).at();
            double gone = flow.goneBefore(boundary, at);
            double past = Math.max(0, passed[i]);
            states.add(new PassingState(age.applyAsDouble(at), past, Math.max(0, animals - gone - past)));
            goneWaiting.add(gone);
        }
        return BoundaryEvidence.of(states, goneWaiting, this::glimpses, firstSightAge());
    }

    /** The looks that tell how many had passed, the opening among them. */
    private List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        flow.opening()
                .filter(at -> age.applyAsDouble(at) > 0)
                .ifPresent(at -> rows.add(new Row(at, flow.openedPast(boundary))));
        for (Check check : checks) {
            boolean noneBefore = rows.stream().allMatch(row -> row.passed() == 0);
            OptionalInt alive = alivePast(check, noneBefore);
            if (alive.isPresent()) {
                rows.add(new Row(check.at(), alive.getAsInt() + flow.gonePast(boundary, check.at())));
            }
        }
        return rows;
    }

    /**
     * Animals seen alive past the boundary, where the look tells: it counted the whole tray, or every stage
     * from here on, or found none here before any had passed.
     */
    private OptionalInt alivePast(Check check, boolean noneBefore) {
        if (boundary == Stage.DARKENED && check.counted(boundary).isEmpty()) {
            return OptionalInt.empty();
        }
        boolean isWhole = check.total().isPresent();
        int sum = 0;
        for (Stage stage : Stage.values()) {
            if (stage.isAtLeast(boundary)) {
                OptionalInt counted = check.counted(stage);
                boolean isUnseenBeyond = noneBefore
                        && stage != boundary
                        && check.look(stage) instanceof Look.NotLooked
                        && check.look(boundary) instanceof Look.None;
                boolean isUncountedCue = stage == Stage.DARKENED && check.look(stage) instanceof Look.NotLooked;
                if (counted.isEmpty() && !isWhole && !isUnseenBeyond && !isUncountedCue) {
                    return OptionalInt.empty();
                }
                sum += counted.orElse(0);
            }
        }
        return OptionalInt.of(sum);
    }

    /** All samples after a state and before an age, and the first sight of any that had passed. */
    private List<Glimpse> glimpses(PassingState from, double toAge, double candidates) {
        int inQuestion = (int) Math.round(candidates);
        if (inQuestion < 1) {
            return List.of();
        }
        List<Glimpse> glimpses = new ArrayList<>();
        boolean isSightNews = from.passed() == 0;
        for (Check check : checks) {
            if (isWithin(age.applyAsDouble(check.at()), from.age(), toAge)) {
                Optional<Glimpse> sample = sample(check, from, inQuestion);
                sample.ifPresent(glimpses::add);
                if (sample.isEmpty() && isSightNews && isSight(check)) {
                    glimpses.add(Glimpse.seen(age.applyAsDouble(check.at()), Math.min(inQuestion, MOST_SIGHTED)));
                    isSightNews = false;
                }
            }
        }
        return glimpses;
    }

    private OptionalDouble firstSightAge() {
        return checks.stream()
                .filter(this::isSight)
                .mapToDouble(check -> age.applyAsDouble(check.at()))
                .findFirst();
    }

    private static boolean isWithin(double value, double above, double below) {
        return value > above && value < below;
    }

    private boolean isSight(Check check) {
        return check.looks().entrySet().stream()
                .anyMatch(look ->
                        look.getKey().isAtLeast(boundary) && look.getValue().showsAny());
    }

    /** A sample tells of a boundary where it was the last stage seen: nothing is said of any beyond it. */
    private Optional<Glimpse> sample(Check check, PassingState from, int inQuestion) {
        boolean isLastSeen = check.looks().entrySet().stream()
                .noneMatch(look ->
                        look.getKey().compareTo(boundary) > 0 && look.getValue().showsAny());
        if (!isLastSeen || !(check.look(boundary) instanceof Look.Sample sample)) {
            return Optional.empty();
        }
        int alive = (int) Math.round(animals - flow.gone(check.at()));
        int already = (int) Math.round(Math.max(0, from.passed() - flow.gonePast(boundary, check.at())));
        return Optional.of(
                Glimpse.sample(age.applyAsDouble(check.at()), inQuestion, already, alive, sample.count(), sample.of()));
    }

    private record Row(Instant at, double passed) {}
}
