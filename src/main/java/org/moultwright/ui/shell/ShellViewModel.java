package org.moultwright.ui.shell;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.moultwright.language.Degrees;
import org.moultwright.language.Texts;
import org.moultwright.text.DayWords;
import org.moultwright.ui.control.Tone;

/** What the frame shows: which screen is open, what matters now, what was saved last. */
public final class ShellViewModel implements SaveLine {
    /** A probe older than this is silent (common practice, no source). */
    public static final Duration SILENT_AFTER = Duration.ofMinutes(10);

    private final DayWords days;
    private final ObjectProperty<String> current = new SimpleObjectProperty<>("");
    private final ReadOnlyObjectWrapper<TopLine> topLine = new ReadOnlyObjectWrapper<>(TopLine.NOTHING);
    private final ObservableList<ProbeWords> probes = FXCollections.observableArrayList();
    /** Kept, for a wrapper nobody keeps is gone with its listeners. */
    private final ObservableList<ProbeWords> probesShown = FXCollections.unmodifiableObservableList(probes);

    private List<TopLine.ProbeNow> heard = List.of();

    private final ReadOnlyStringWrapper savedWords = new ReadOnlyStringWrapper("");
    private final ReadOnlyObjectWrapper<Optional<Runnable>> undo = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ObjectProperty<Optional<Notice>> notice = new SimpleObjectProperty<>(Optional.empty());

    public ShellViewModel(DayWords days) {
        this.days = days;
    }

    /** The id of the open screen. */
    public ObjectProperty<String> currentProperty() {
        return current;
    }

    public ReadOnlyObjectProperty<TopLine> topLineProperty() {
        return topLine.getReadOnlyProperty();
    }

    public ObservableList<ProbeWords> probes() {
        return probesShown;
    }

    public ReadOnlyStringProperty savedWordsProperty() {
        return savedWords.getReadOnlyProperty();
    }

    public ReadOnlyObjectProperty<Optional<Runnable>> undoProperty() {
        return undo.getReadOnlyProperty();
    }

    public ObjectProperty<Optional<Notice>> noticeProperty() {
        return notice;
    }

    /** Says something under the top line, until the keeper closes it or something else is said. */
    public void tell(Tone tone, String sentence, String remedy) {
        tell(new Notice(tone, sentence, remedy));
    }

    /** The same of a notice. */
    public void tell(Notice said) {
        notice.set(Optional.of(said));
    }

    /** Shows what matters as of {@code now}. */
    public void show(TopLine line, Instant now) {
        topLine.set(line);
        showProbes(now);
    }

    /**
     * The readings have aged.
     *
     * @param since what was heard of probes since the line was shown
     */
    public void age(List<TopLine.ProbeNow> since, Instant now) {
        heard = List.copyOf(since);
        showProbes(now);
    }

    private void showProbes(Instant now) {
        List<ProbeWords> words = topLine.get().withHeard(heard).probes().stream()
                .map(probe -> words(probe, now))
                .toList();
        if (!words.equals(probes)) {
            probes.setAll(words);
        }
    }

    @Override
    public void saved(Instant at, Runnable takeBack) {
        savedWords.set(Texts.say("Saved {0}", days.clock(at)));
        undo.set(Optional.of(takeBack));
    }

    /** Takes the last saved action back, once. */
    public void undo() {
        Optional<Runnable> last = undo.get();
        forget();
        last.ifPresent(Runnable::run);
    }

    /** Something was taken back elsewhere: what was saved last may not be last any more. */
    public void forget() {
        undo.set(Optional.empty());
        savedWords.set("");
    }

    private static ProbeWords words(TopLine.ProbeNow probe, Instant now) {
        Duration age = Duration.between(probe.takenAt(), now);
        boolean silent = age.compareTo(SILENT_AFTER) > 0;
        String reading = Degrees.words(probe.temperatureCelsius(), 1);
        String rest = silent
                ? Texts.say("{0}, silent for {1}", probe.place(), DayWords.age(age))
                : Texts.say("{0}, {1} ago", probe.place(), DayWords.age(age));
        return new ProbeWords(silent ? Tone.WARN : Tone.OK, reading, rest);
    }

    /** A probe in words: how it is, what it reads, where and how old that is. */
    public record ProbeWords(Tone tone, String reading, String placeAndAge) {
        boolean isSilent() {
            return tone == Tone.WARN;
        }
    }
}
