package org.moultwright.ui.round;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.TreeSet;
import org.moultwright.domain.Stage;
import org.moultwright.text.DayWords;
import org.moultwright.text.Vocabulary;
import org.moultwright.ui.control.Tone;
import org.moultwright.workflow.Balance;
import org.moultwright.workflow.SheetDraft;
import org.moultwright.workflow.TrayView;

/** The sentences of the round. */
final class RoundWords {
    static final String STILL_SAVING = "This tray's sheet before is still being saved. Press Done again in a moment.";

    private RoundWords() {}

    /** "CC-26-B · box 2, top · day 60 · 56.1 warm-days". */
    static String trayFacts(TrayFacts facts) {
        List<String> parts = new ArrayList<>();
        parts.add(facts.brood());
        if (!facts.view().place().isEmpty()) {
            parts.add(facts.view().place());
        }
        facts.day().ifPresent(day -> parts.add("day " + day));
        facts.warmDays().ifPresent(age -> parts.add("%.1f warm-days".formatted(age)));
        return String.join(" · ", parts);
    }

    static String balance(Balance balance) {
        if (balance.counted().isEmpty()) {
            return "%d expected, %d taken out, the rest not counted".formatted(balance.expected(), balance.taken());
        }
        return "%d expected = %d counted + %d dead + %d unexplained"
                .formatted(balance.expected(), balance.counted().getAsInt(), balance.taken(), balance.unexplained());
    }

    /** "Tally: 23 animals counted, 56 expected." */
    static String tally(Prompt.Tally tally, Balance balance) {
        return "Tally: %d %s counted, %d expected."
                .formatted(tally.counted(), tally.counted() == 1 ? "animal" : "animals", balance.expected());
    }

    /** What the keys do while animals are counted. */
    static String tallyKeys(Prompt.Tally tally, int stages) {
        return "1 to %d count one each, Backspace takes the last one back, S turns sounds %s, T ends the tally."
                .formatted(stages, tally.isHeard() ? "off" : "on");
    }

    /** What to say where the balance does not hold. */
    static String question(Balance balance) {
        int written = balance.counted().orElse(0) + balance.taken();
        return balance.unexplained() > 0
                ? "%d written, %d expected. Recount, an earlier miscount, or %s gone?"
                        .formatted(
                                written, balance.expected(), balance.unexplained() == 1 ? "one" : balance.unexplained())
                : "%d written, %d expected. Recount, or an earlier miscount?".formatted(written, balance.expected());
    }

    /** "First slings between 4 and 8 May.", or why that cannot be said. */
    static String foresight(TrayFacts facts, DayWords days, Vocabulary vocabulary) {
        if (facts.awaitsDates()) {
            return "The dates are being worked out. You can count meanwhile.";
        }
        if (facts.view().forecast().map(forecast -> forecast.moults().isEmpty()).orElse(true)) {
            return "Too early to say when the next stage comes.";
        }
        return facts.nextFirst()
                .map(next -> "First %s of %s: %s."
                        .formatted(
                                vocabulary.plural(next.getKey()),
                                facts.tray(),
                                days.days(next.getValue().p10(), next.getValue().p90())))
                .orElse("No further stage is to come for the first time.");
    }

    /** "56 · 2 slings": how many, and how many of them are in the last stage. */
    static String contents(TrayView tray, Stage last, Vocabulary vocabulary) {
        int arrived = tray.composition().getOrDefault(last, 0);
        String all = Integer.toString(tray.alive());
        return arrived == 0
                ? all
                : all + " · " + arrived + " " + (arrived == 1 ? vocabulary.singular(last) : vocabulary.plural(last));
    }

    /** How long the rest takes at the pace of the sheets saved so far; nothing before the second one. */
    static String pace(List<Instant> saves, int left) {
        if (saves.size() < 2 || left == 0) {
            return "";
        }
        Duration apart =
                Duration.between(saves.get(0), saves.get(saves.size() - 1)).dividedBy(saves.size() - 1L);
        long minutes = Math.max(1, Math.round(apart.multipliedBy(left).toSeconds() / 60.0));
        return "About %d %s left at tonight's pace.".formatted(minutes, minutes == 1 ? "minute" : "minutes");
    }

    /** "Sunday 3 May, 20:41 · 2 trays left". */
    static String subtitle(DayWords days, Instant now, int left) {
        String trays =
                switch (left) {
                    case 0 -> "all trays done";
                    case 1 -> "one tray left";
                    default -> left + " trays left";
                };
        return "%s, %s · %s".formatted(days.longDay(now), days.clock(now), trays);
    }

    static String finished(int trays) {
        return trays == 1 ? "The one tray is done for today." : "All %d trays are done for today.".formatted(trays);
    }

    /** A tray's line in the list. */
    static TrayLine line(TrayFacts facts, boolean isDone, boolean isOpen, Vocabulary vocabulary) {
        TrayView tray = facts.view();
        String expected = tray.alive() + " expected";
        if (isDone) {
            String contents = contents(tray, facts.record().brood().lastStage(), vocabulary);
            return new TrayLine(tray.tray(), tray.place(), "✓ done", Tone.OK, contents, isOpen);
        }
        if (tray.due() == TrayView.Due.LATE) {
            return new TrayLine(tray.tray(), tray.place(), late(facts), Tone.WARN, expected, isOpen);
        }
        return isOpen
                ? new TrayLine(tray.tray(), tray.place(), "now", Tone.ACCENT, expected, true)
                : new TrayLine(tray.tray(), tray.place(), "due", Tone.MUTED, expected, false);
    }

    private static String late(TrayFacts facts) {
        return facts.view()
                .lastLook()
                .map(last -> "late, " + DayWords.age(Duration.between(last, facts.now())))
                .orElse("late, never seen");
    }

    /** What keeps a sheet from being saved, apart from its balance; empty if nothing does. */
    static String obstacle(SheetViewModel fields) {
        if (fields.isBlank()) {
            return "Nothing is written yet. Count, or press = if it looks as expected.";
        }
        if (!fields.isSound()) {
            return "One look cannot be read yet. Write 7/20 for seven of twenty looked at.";
        }
        return fields.balanceProperty().get().takesTooMany()
                ? "More are taken out than the tray holds. Recount those taken out."
                : "";
    }

    static String notSaved(RuntimeException fault) {
        return "Not saved: " + fault.getMessage();
    }

    static String notSavedElsewhere(String tray, RuntimeException fault) {
        return "%s was not saved: %s Its sheet is as you left it; open it and press Done again."
                .formatted(tray, fault.getMessage());
    }

    /** "A1 changed since this sheet was begun, 3 May, 20:41." */
    static String outdated(TrayFacts facts, SheetDraft.Basis basis, DayWords days) {
        return "%s changed since this sheet was begun, %s.".formatted(facts.tray(), when(basis, days));
    }

    /** "A sheet for A1, begun on 3 May, 20:41, was not saved, and A1 holds no animals any more." */
    static String stray(SheetDraft draft, DayWords days) {
        return "A sheet for %s, begun on %s, was not saved, and %s holds no animals any more."
                .formatted(draft.tray(), when(draft.basis(), days), draft.tray());
    }

    /** All that stands on a sheet: "Nymph 34; 2 nymph dead, mould; watered; lid was ajar". */
    static String written(SheetDraft draft, Vocabulary names) {
        List<String> parts = new ArrayList<>();
        new EnumMap<>(draft.looks()).forEach((stage, look) -> parts.add(names.label(stage) + " " + look));
        draft.losses()
                .forEach(loss -> parts.add("%d dead of %s, %s"
                        .formatted(
                                loss.count(),
                                names.label(loss.stage()),
                                loss.cause().words())));
        draft.mould()
                .ifPresent(mould ->
                        parts.add("mould on %s, %s, %s".formatted(mould.where(), mould.extent(), mould.action())));
        parts.addAll(new TreeSet<>(draft.care()));
        if (!draft.note().isBlank()) {
            parts.add(draft.note());
        }
        return "Written: " + String.join("; ", parts);
    }

    /** Asked beneath a count, and never in its way. */
    static String farOff(String expected) {
        return "Far from the %s expected. Is it as you meant it?".formatted(expected);
    }

    private static String when(SheetDraft.Basis basis, DayWords days) {
        return days.shortDay(basis.begunAt()) + ", " + days.clock(basis.begunAt());
    }

    static String notUndone(RuntimeException fault) {
        return "Not undone: " + fault.getMessage();
    }
}
