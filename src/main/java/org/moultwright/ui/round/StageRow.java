package org.moultwright.ui.round;

import java.util.Optional;
import java.util.OptionalInt;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import org.moultwright.compute.forecast.CountInterval;
import org.moultwright.domain.Look;
import org.moultwright.domain.Stage;
import org.moultwright.language.Texts;

/** One stage's row of the sheet: what it held, what is expected of it, what the keeper writes. */
final class StageRow {
    private static final String UNKNOWN = "–";
    private static final long MOST_SLIPPED = 2;

    private final Stage stage;
    private final ReadOnlyStringWrapper last = new ReadOnlyStringWrapper(UNKNOWN);
    private final ReadOnlyStringWrapper expected = new ReadOnlyStringWrapper(UNKNOWN);
    private final StringProperty text = new SimpleStringProperty(LookEntry.NOT_LOOKED);
    private final ReadOnlyStringWrapper question = new ReadOnlyStringWrapper("");
    private OptionalInt lastCount = OptionalInt.empty();
    private Optional<CountInterval> interval = Optional.empty();

    StageRow(Stage stage) {
        this.stage = stage;
        text.addListener((observed, before, now) -> question.set(""));
    }

    public Stage stage() {
        return stage;
    }

    /** Animals last known in this stage. */
    public ReadOnlyStringProperty lastProperty() {
        return last.getReadOnlyProperty();
    }

    /** What is expected now, such as "44 to 56"; a dash where it cannot be told. */
    public ReadOnlyStringProperty expectedProperty() {
        return expected.getReadOnlyProperty();
    }

    /** What the keeper has written, in the form of {@link LookEntry}. */
    public StringProperty textProperty() {
        return text;
    }

    /** Asked, once the keeper has left the field, of a count far from what is expected; empty otherwise. */
    public ReadOnlyStringProperty questionProperty() {
        return question.getReadOnlyProperty();
    }

    /** The keeper has left the field. */
    void left() {
        boolean isFar = look() instanceof Look.Full full
                && interval.filter(expectation -> isFar(full.count(), expectation))
                        .isPresent();
        question.set(isFar ? RoundWords.farOff(expected.get()) : "");
    }

    /** What the text says so far; text that is not a look yet counts as not looked. */
    Look look() {
        return LookEntry.parse(text.get()).orElse(new Look.NotLooked());
    }

    /** What is wrong with the text, in a sentence; empty when nothing is. */
    String problem() {
        return LookEntry.problem(text.get());
    }

    boolean isBlank() {
        return text.get().isEmpty();
    }

    void show(OptionalInt count, Optional<CountInterval> expectation) {
        lastCount = count;
        interval = expectation;
        last.set(count.isPresent() ? Integer.toString(count.getAsInt()) : UNKNOWN);
        expected.set(expectation.map(StageRow::words).orElse(UNKNOWN));
    }

    /** Whether animals may well be here: the first such row is where a keeper begins. */
    boolean mayHoldAnimals() {
        return lastCount.orElse(0) > 0 || interval.map(StageRow::high).orElse(0L) > 0;
    }

    /**
     * Writes what a look shows that found the tray as expected: seen where some must be, none where none
     * can be, nothing where either would do. It never claims a count.
     */
    void writeAsExpected() {
        if (interval.isPresent()) {
            text.set(
                    low(interval.get()) > 0
                            ? LookEntry.SEEN
                            : high(interval.get()) == 0 ? LookEntry.NONE : LookEntry.NOT_LOOKED);
        } else if (lastCount.isPresent()) {
            text.set(lastCount.getAsInt() > 0 ? LookEntry.SEEN : LookEntry.NONE);
        }
    }

    /** Counts one more; a look that was no count becomes one. */
    public void countOneMore() {
        text.set(Integer.toString(count() + 1));
    }

    /**
     * Takes one back from the count.
     *
     * @param before what was written before the count began, which is there again once all of it is taken back
     */
    void countOneLess(String before) {
        text.set(count() > 1 ? Integer.toString(count() - 1) : before);
    }

    private int count() {
        return look() instanceof Look.Full full ? full.count() : 0;
    }

    /** Beyond the interval by more than its own width, and by more than a slip of two (our own rule). */
    private static boolean isFar(int count, CountInterval interval) {
        long margin = Math.max(MOST_SLIPPED, high(interval) - low(interval));
        return count < low(interval) - margin || count > high(interval) + margin;
    }

    private static String words(CountInterval interval) {
        long low = low(interval);
        long high = high(interval);
        return low == high ? Long.toString(low) : Texts.say("{0} to {1}", low, high);
    }

    private static long low(CountInterval interval) {
        return Math.round(interval.p10());
    }

    private static long high(CountInterval interval) {
        return Math.round(interval.p90());
    }
}
