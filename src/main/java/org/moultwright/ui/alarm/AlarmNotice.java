package org.moultwright.ui.alarm;

import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import org.moultwright.domain.AlarmKind;
import org.moultwright.language.Degrees;
import org.moultwright.language.Texts;
import org.moultwright.text.AlarmWords;
import org.moultwright.text.DayWords;
import org.moultwright.workflow.AdvisedException;
import org.moultwright.workflow.WatchView;

/**
 * What the banner says; nothing where the headline is empty.
 *
 * @param headline where and what, readable across a room
 * @param figure the measured value, large; empty where there is none
 * @param detail since when, and what to do
 * @param others what else there is, possibly empty
 * @param canBeSeen whether there is an alarm to be acknowledged
 */
record AlarmNotice(String headline, String figure, String detail, String others, boolean canBeSeen) {
    static final AlarmNotice NOTHING = new AlarmNotice("", "", "", "", false);

    /** The kinds, the most urgent first. */
    private static final List<AlarmKind> BY_URGENCY = List.of(
            AlarmKind.VERY_HIGH,
            AlarmKind.VERY_LOW,
            AlarmKind.HIGH,
            AlarmKind.LOW,
            AlarmKind.SILENT,
            AlarmKind.RATE,
            AlarmKind.STUCK,
            AlarmKind.CONDENSATION,
            AlarmKind.DRIFT);

    static AlarmNotice of(WatchView view, Instant now, DayWords days) {
        List<WatchView.Alarm> waiting = view.alarms().stream()
                .filter(WatchView.Alarm::wantsEyes)
                .sorted(Comparator.comparing(WatchView.Alarm::isOver)
                        .thenComparing(alarm -> BY_URGENCY.indexOf(alarm.kind()))
                        .thenComparing(WatchView.Alarm::place))
                .toList();
        if (waiting.isEmpty()) {
            return view.unwritten().map(AlarmNotice::unwritten).orElse(NOTHING);
        }
        WatchView.Alarm first = waiting.get(0);
        String others = waiting.stream()
                .skip(1)
                .map(alarm -> alarm.isOver()
                        ? Texts.say("{0} {1}, over", alarm.place(), AlarmWords.name(alarm.kind()))
                        : alarm.place() + " " + AlarmWords.name(alarm.kind()))
                .collect(Collectors.joining("; "));
        return new AlarmNotice(
                first.isOver()
                        ? Texts.say("{0} was {1}", first.place(), AlarmWords.name(first.kind()))
                        : first.place() + " " + AlarmWords.name(first.kind()),
                figure(first, now),
                detail(first, now, days),
                others.isEmpty() ? "" : Texts.say("Also: {0}.", others),
                true);
    }

    private static String figure(WatchView.Alarm alarm, Instant now) {
        if (alarm.kind() == AlarmKind.SILENT && !alarm.isOver()) {
            // Raised at so much silence; since then it has lasted.
            return DayWords.age(Duration.ofSeconds((long) alarm.raisedAt()).plus(age(alarm, now)));
        }
        return Double.isNaN(alarm.celsius()) ? "" : Degrees.words(alarm.celsius(), 1);
    }

    private static String detail(WatchView.Alarm alarm, Instant now, DayWords days) {
        if (alarm.isOver()) {
            return Texts.say("It began at {0} and is over; nobody has seen it.", days.clock(alarm.since()));
        }
        String at = AlarmWords.value(alarm.kind(), alarm.raisedAt());
        String since = days.clock(alarm.since());
        String age = DayWords.age(age(alarm, now));
        String when = alarm.kind() == AlarmKind.SILENT || at.isEmpty()
                ? Texts.say("Since {0}, {1} ago.", since, age)
                : Texts.say("Since {0}, {1} ago, raised at {2}.", since, age, at);
        return when + " " + AlarmWords.remedy(alarm.kind());
    }

    private static Duration age(WatchView.Alarm alarm, Instant now) {
        return Duration.between(alarm.since(), now);
    }

    private static AlarmNotice unwritten(RuntimeException fault) {
        String why = fault instanceof AdvisedException advised ? advised.advice() : String.valueOf(fault.getMessage());
        return new AlarmNotice(
                Texts.say("The alarm journal cannot be written"),
                "",
                why,
                Texts.say("It is tried again by itself."),
                false);
    }
}
