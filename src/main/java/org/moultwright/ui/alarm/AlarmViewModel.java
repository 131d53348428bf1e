package org.moultwright.ui.alarm;

import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import org.moultwright.domain.AlarmEntry;
import org.moultwright.language.Texts;
import org.moultwright.task.Outcome;
import org.moultwright.text.DayWords;
import org.moultwright.ui.control.Tone;
import org.moultwright.workflow.WatchView;

/** What the watch finds, as banner and top line say it; rings while something sounds. */
public final class AlarmViewModel {
    /** How often the tone comes again; ours, no source. */
    private static final Duration RING_EVERY = Duration.ofSeconds(10);

    /** How often it comes once nobody has come for too long. */
    private static final Duration RING_EVERY_ESCALATED = Duration.ofSeconds(4);

    private final AlarmDesk desk;
    private final ReadOnlyObjectWrapper<AlarmNotice> notice = new ReadOnlyObjectWrapper<>(AlarmNotice.NOTHING);
    private final ReadOnlyObjectWrapper<AlarmLine> line = new ReadOnlyObjectWrapper<>(AlarmLine.NOTHING);
    private final ReadOnlyObjectWrapper<Optional<AlarmEntry>> lastTurn = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");
    private Optional<Long> rangAtNanos = Optional.empty();

    public AlarmViewModel(AlarmDesk desk) {
        this.desk = desk;
    }

    /**
     * How the watch stands in the top line.
     *
     * @param tone how urgent
     * @param state such as "No alarm"
     * @param age how old the last reading is, possibly empty
     */
    public record AlarmLine(Tone tone, String state, String age) {
        static final AlarmLine NOTHING = new AlarmLine(Tone.MUTED, Texts.say("Nothing is watched"), "");
    }

    ReadOnlyObjectProperty<AlarmNotice> noticeProperty() {
        return notice.getReadOnlyProperty();
    }

    public ReadOnlyObjectProperty<AlarmLine> lineProperty() {
        return line.getReadOnlyProperty();
    }

    /** What the journal says last of all since the desk was opened. */
    public ReadOnlyObjectProperty<Optional<AlarmEntry>> lastTurnProperty() {
        return lastTurn.getReadOnlyProperty();
    }

    /** Why what the keeper asked for could not be written down; empty when it could. */
    ReadOnlyStringProperty problemProperty() {
        return problem.getReadOnlyProperty();
    }

    /** Shows how the watch stands now; to be called every few seconds. */
    public void show(WatchView view) {
        Instant now = desk.clock().instant();
        AlarmNotice said = AlarmNotice.of(view, now, desk.days());
        notice.set(said);
        line.set(new AlarmLine(tone(view, said), state(view, said), age(view, now)));
        ring(view);
    }

    /** Something happened to an alarm and is in the journal. */
    public void turned(AlarmEntry entry) {
        lastTurn.set(Optional.of(entry));
    }

    /** Whether there is an alarm nobody has seen. */
    public boolean wantsEyes() {
        return notice.get().canBeSeen();
    }

    /** The keeper has seen it. */
    public void acknowledge() {
        keep(desk.acknowledge());
    }

    /** The keeper wants quiet for a while. */
    public void snooze(Duration length) {
        keep(() -> desk.snooze().accept(length));
    }

    private void keep(Runnable deed) {
        desk.runner()
                .<Boolean>run(
                        progress -> {
                            deed.run();
                            return true;
                        },
                        outcome -> problem.set(
                                outcome instanceof Outcome.Failed<Boolean> failed
                                        ? Texts.say(
                                                "Not written down: {0}",
                                                failed.fault().getMessage())
                                        : ""));
    }

    private void ring(WatchView view) {
        List<WatchView.Alarm> sounding =
                view.alarms().stream().filter(WatchView.Alarm::isSounding).toList();
        if (sounding.isEmpty()) {
            rangAtNanos = Optional.empty();
            return;
        }
        boolean isEscalated = sounding.stream().anyMatch(WatchView.Alarm::isEscalated);
        long pauseNanos = (isEscalated ? RING_EVERY_ESCALATED : RING_EVERY).toNanos();
        long nanos = desk.steadyNanos().getAsLong();
        if (rangAtNanos.isEmpty() || nanos - rangAtNanos.get() >= pauseNanos) {
            rangAtNanos = Optional.of(nanos);
            desk.sound().run();
        }
    }

    private static Tone tone(WatchView view, AlarmNotice said) {
        if (!said.headline().isEmpty()) {
            return Tone.BAD;
        }
        if (!view.alarms().isEmpty()) {
            return Tone.WARN;
        }
        return view.places().isEmpty() ? Tone.MUTED : Tone.OK;
    }

    private String state(WatchView view, AlarmNotice said) {
        if (!said.headline().isEmpty()) {
            return said.canBeSeen() ? Texts.say("Alarm") : said.headline();
        }
        int known = view.alarms().size();
        if (known > 0) {
            return view.alarms().stream()
                    .flatMap(alarm -> alarm.quietUntil().stream())
                    .min(Comparator.naturalOrder())
                    .map(end -> Texts.count(
                            known,
                            "1 alarm, quiet until {1}",
                            "{0} alarms, quiet until {1}",
                            known,
                            desk.days().clock(end)))
                    .orElseGet(() -> Texts.count(known, "1 alarm, seen", "{0} alarms, seen", known));
        }
        return view.places().isEmpty() ? AlarmLine.NOTHING.state() : Texts.say("No alarm");
    }

    private static String age(WatchView view, Instant now) {
        if (view.places().isEmpty()) {
            return "";
        }
        return view.heardAt()
                .map(at -> Texts.say("last reading {0} ago", DayWords.age(Duration.between(at, now))))
                .orElse(Texts.say("nothing heard yet"));
    }
}
