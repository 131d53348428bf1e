package org.moultwright.ui.round;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.moultwright.domain.Stage;
import org.moultwright.language.Numbers;
import org.moultwright.language.Texts;
import org.moultwright.text.DayWords;
import org.moultwright.text.Vocabulary;
import org.moultwright.ui.control.Tone;
import org.moultwright.workflow.Balance;
import org.moultwright.workflow.SheetDraft;
import org.moultwright.workflow.TrayView;

/** The sentences of the round. */
final class RoundWords {
    static final String STILL_SAVING =
            Texts.say("This tray's sheet before is still being saved. Press Done again in a moment.");

    private RoundWords() {}

    /** "CC-26-B · box 2, top · day 60 · 56.1 warm-days". */
    static String trayFacts(TrayFacts facts) {
        List<String> parts = new ArrayList<>();
        parts.add(facts.brood());
        if (!facts.view().place().isEmpty()) {
            parts.add(facts.view().place());
        }
        facts.day().ifPresent(day -> parts.add(Texts.say("day {0}", day)));
        facts.warmDays().ifPresent(age -> parts.add(Texts.say("{0} warm-days", Numbers.fixed(age, 1))));
        return String.join(" · ", parts);
    }

    static String balance(Balance balance) {
        if (balance.counted().isEmpty()) {
            return Texts.say("{0} expected, {1} taken out, the rest not counted", balance.expected(), balance.taken());
        }
        int counted = balance.counted().getAsInt();
        int unexplained = balance.unexplained();
        return unexplained < 0
                ? Texts.say(
                        "{0} expected = {1} counted + {2} dead − {3} unexplained",
                        balance.expected(), counted, balance.taken(), -unexplained)
                : Texts.say(
                        "{0} expected = {1} counted + {2} dead + {3} unexplained",
                        balance.expected(), counted, balance.taken(), unexplained);
    }

    /** "Tally: 23 animals counted, 56 expected." */
    static String tally(Prompt.Tally tally, Balance balance) {
        return Texts.say(
                "Tally: {0} {1} counted, {2} expected.",
                tally.counted(), Texts.count(tally.counted(), "animal", "animals"), balance.expected());
    }

    /** What the keys do while animals are counted, or that none of them is heard. */
    static String tallyKeys(Prompt.Tally tally, int stages) {
        if (tally.ear() == TallyEar.State.MUTE) {
            return Texts.say("This machine has no sound that can be used: plug in a speaker and press S again. "
                    + "T ends the tally.");
        }
        return Texts.say(
                "1 to {0} count one each, Backspace takes the last one back, S turns sounds {1}, T ends the tally.",
                stages, tally.ear() == TallyEar.State.OPEN ? Texts.say("off") : Texts.say("on"));
    }

    /** What to say where the balance does not hold. */
    static String question(Balance balance) {
        int written = balance.counted().orElse(0) + balance.taken();
        return balance.unexplained() > 0
                ? Texts.say(
                        "{0} written, {1} expected. Recount, an earlier miscount, or {2} gone?",
                        written,
                        balance.expected(),
                        balance.unexplained() == 1 ? Texts.say("one") : balance.unexplained())
                : Texts.say("{0} written, {1} expected. Recount, or an earlier miscount?", written, balance.expected());
    }

    /** "First slings between 4 and 8 May.", or why that cannot be said. */
    static String foresight(TrayFacts facts, DayWords days, Vocabulary vocabulary) {
        if (facts.awaitsDates()) {
            return Texts.say("The dates are being worked out. You can count meanwhile.");
        }
        if (facts.view().forecast().map(forecast -> forecast.moults().isEmpty()).orElse(true)) {
            return Texts.say("Too early to say when the next stage comes.");
        }
        return facts.nextFirst()
                .map(next -> Texts.say(
                        "First {0} of {1}: {2}.",
                        vocabulary.plural(next.getKey()),
                        facts.tray(),
                        days.days(next.getValue().p10(), next.getValue().p90())))
                .orElse(Texts.say("No further stage is to come for the first time."));
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
        return Texts.say("About {0} {1} left at tonight's pace.", minutes, Texts.count(minutes, "minute", "minutes"));
    }

    /** "Sunday 3 May, 20:41 · 2 trays left". */
    static String subtitle(DayWords days, Instant now, int left) {
        String trays =
                switch (left) {
                    case 0 -> Texts.say("all trays done");
                    case 1 -> Texts.say("one tray left");
                    default -> Texts.say("{0} trays left", left);
                };
        return "%s, %s · %s".formatted(days.longDay(now), days.clock(now), trays);
    }

    static String finished(int trays) {
        return Texts.count(trays, "The one tray is done for today.", "All {0} trays are done for today.", trays);
    }

    /** A tray's line in the list. */
    static TrayLine line(TrayFacts facts, boolean isDone, boolean isOpen, Vocabulary vocabulary) {
        TrayView tray = facts.view();
        String expected = Texts.say("{0} expected", tray.alive());
        if (isDone) {
            String contents = contents(tray, facts.record().brood().lastStage(), vocabulary);
            return new TrayLine(tray.tray(), tray.place(), Texts.say("✓ done"), Tone.OK, contents, isOpen);
        }
        if (tray.due() == TrayView.Due.LATE) {
            return new TrayLine(tray.tray(), tray.place(), late(facts), Tone.WARN, expected, isOpen);
        }
        return isOpen
                ? new TrayLine(tray.tray(), tray.place(), Texts.say("now"), Tone.ACCENT, expected, true)
                : new TrayLine(tray.tray(), tray.place(), Texts.say("due"), Tone.MUTED, expected, false);
    }

    private static String late(TrayFacts facts) {
        return facts.view()
                .lastLook()
                .map(last -> Texts.say("late, {0}", DayWords.age(Duration.between(last, facts.now()))))
                .orElse(Texts.say("late, never seen"));
    }

    /** What keeps a sheet from being saved, apart from its balance; empty if nothing does. */
    static String obstacle(SheetViewModel fields) {
        if (fields.isBlank()) {
            return Texts.say("Nothing is written yet. Count, or press = if it looks as expected.");
        }
        Optional<String> unread = fields.rows().stream()
                .map(StageRow::problem)
                .filter(problem -> !problem.isEmpty())
                .findFirst();
        if (unread.isPresent()) {
            return Texts.say("One look cannot be read yet. {0}", unread.get());
        }
        return fields.balanceProperty().get().takesTooMany()
                ? Texts.say("More are taken out than the tray holds. Recount those taken out.")
                : "";
    }

    static String notSaved(RuntimeException fault) {
        return Texts.say("Not saved: {0}", fault.getMessage());
    }

    static String notSavedElsewhere(String tray, RuntimeException fault) {
        return Texts.say(
                "{0} was not saved: {1} Its sheet is as you left it; open it and press Done again.",
                tray, fault.getMessage());
    }

    /** "A1 changed since this sheet was begun, 3 May, 20:41." */
    static String outdated(TrayFacts facts, SheetDraft.Basis basis, DayWords days) {
        return Texts.say("{0} changed since this sheet was begun, {1}.", facts.tray(), when(basis, days));
    }

    /** "A sheet for A1, begun on 3 May, 20:41, was not saved, and A1 holds no animals any more." */
    static String stray(SheetDraft draft, DayWords days) {
        return Texts.say(
                "A sheet for {0}, begun on {1}, was not saved, and {0} holds no animals any more.",
                draft.tray(), when(draft.basis(), days));
    }

    /** All that stands on a sheet: "Nymph 34; 2 nymph dead, mould; watered; lid was ajar". */
    static String written(SheetDraft draft, Vocabulary names) {
        List<String> parts = new ArrayList<>();
        new EnumMap<>(draft.looks()).forEach((stage, look) -> parts.add(names.label(stage) + " " + look));
        draft.losses()
                .forEach(loss -> parts.add(Texts.say(
                        "{0} dead of {1}, {2}",
                        loss.count(),
                        names.label(loss.stage()),
                        Texts.say(loss.cause().words()))));
        draft.mould()
                .ifPresent(mould -> parts.add(Texts.say(
                        "mould on {0}, {1}, {2}",
                        Texts.say(mould.where()), Texts.say(mould.extent()), Texts.say(mould.action()))));
        new TreeSet<>(draft.care()).forEach(care -> parts.add(Texts.say(care)));
        if (!draft.note().isBlank()) {
            parts.add(draft.note());
        }
        return Texts.say("Written: {0}", String.join("; ", parts));
    }

    /** Asked beneath a count, and never in its way. */
    static String farOff(String expected) {
        return Texts.say("Far from the {0} expected. Is it as you meant it?", expected);
    }

    private static String when(SheetDraft.Basis basis, DayWords days) {
        return days.shortDay(basis.begunAt()) + ", " + days.clock(basis.begunAt());
    }

    static String notUndone(RuntimeException fault) {
        return Texts.say("Not undone: {0}", fault.getMessage());
    }
}
