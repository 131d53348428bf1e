package org.moultwright.ui.register;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.moultwright.domain.Account;
import org.moultwright.domain.PotEvent;
import org.moultwright.domain.PotEvent.What;
import org.moultwright.domain.Stage;
import org.moultwright.language.Texts;
import org.moultwright.text.DayWords;
import org.moultwright.text.Vocabulary;
import org.moultwright.workflow.RoomView;
import org.moultwright.workflow.TendPots.Tended;

/** The sentences of the register. */
final class RegisterWords {
    static final String EMPTY =
            Texts.say("No pots yet. Each pot filled at the potting bench stands here with its code, and what "
                    + "becomes of its animal: fed, moulted, dead, handed over.");
    static final String HOW_TO_SCAN = Texts.say(
            "Scan label after label: each pot is selected. Then one key writes down what happened to all of them.");
    static final String NONE_SHOWN = Texts.say("No pot is found by these words. Press Esc to see all.");
    static final String NONE_SELECTED = Texts.say("No pot is selected. Scan some, or press Space on one.");

    private static final Pattern COUNTED = Pattern.compile("(.*?)(\\d+)");

    private RegisterWords() {}

    static String animals(int count) {
        return Texts.count(count, "1 animal", "{0} animals", count);
    }

    static String pots(int count) {
        return Texts.count(count, "1 pot", "{0} pots", count);
    }

    /** "5000 pots: 4321 alive, 512 dead, 167 handed over". */
    static String subtitle(List<PotRow> rows) {
        if (rows.isEmpty()) {
            return "";
        }
        return Texts.say(
                "{0}: {1} alive, {2} dead, {3} handed over",
                pots(rows.size()),
                count(rows, PotState.ALIVE),
                count(rows, PotState.DEAD),
                count(rows, PotState.HANDED_OVER));
    }

    /** "12 pots fed. 2 passed over, dead or handed over." */
    static String tended(Tended tended) {
        String words = tended.summary().words() + ".";
        return tended.passedOver() == 0
                ? words
                : words + " " + Texts.say("{0} passed over, dead or handed over.", tended.passedOver());
    }

    static String scanned(PotRow row, boolean isNew, int selected, boolean isShown, int notFound) {
        String words = isNew
                ? Texts.say(
                        "{0}, {1}, {2}: {3} selected.",
                        row.code(), row.broodCode(), row.state().word(), selected)
                : Texts.say("{0} was scanned already and counts once: {1} selected.", row.code(), selected);
        String shown = isShown ? words : words + " " + Texts.say("The filter hides it.");
        return notFound == 0
                ? shown
                : shown
                        + " "
                        + Texts.count(
                                notFound,
                                "1 scan before it was on no pot.",
                                "{0} scans before it were on no pot.",
                                notFound);
    }

    /** "12 selected, 40 shown", or what is done with none selected. */
    static String concerns(int selected, int shown, boolean isAnyLookedAt) {
        if (selected > 0) {
            return Texts.say("{0} selected of {1} shown", selected, pots(shown));
        }
        return isAnyLookedAt
                ? Texts.say("the one looked at, of {0} shown", pots(shown))
                : Texts.say("{0} shown", pots(shown));
    }

    /** The animal's stage by the moults written down: "sling", then "instar 3"; "L1", then "L2" where stages are so counted. */
    static String stage(PotRow row, Vocabulary names) {
        Stage potted = row.brood().lastStage();
        int moults = row.life().moults();
        String label = names.singular(potted);
        if (moults == 0) {
            return label;
        }
        Matcher counted = COUNTED.matcher(label);
        if (counted.matches()) {
            return counted.group(1) + (Integer.parseInt(counted.group(2)) + moults);
        }
        return Texts.say("instar {0}", instar(potted) + moults);
    }

    /** "12 May", "never". */
    static String when(PotRow row, What what, DayWords days) {
        return row.last(what).map(days::shortDay).orElse(Texts.say("never"));
    }

    /** "fed", "moulted: instar 3"; with a note, "handed over: to a club". */
    static String event(PotEvent event) {
        String word =
                switch (event.what()) {
                    case FED -> Texts.say("Fed");
                    case MOULTED -> Texts.say("Moulted");
                    case DIED -> Texts.say("Died");
                    case HANDED_OVER -> Texts.say("Handed over");
                };
        return event.note().isEmpty() ? word : word + ": " + event.note();
    }

    /** "CC-26-A, from A1, 30 ml". */
    static String from(PotRow row) {
        String tray = row.life().pot().tray();
        return row.size().isEmpty()
                ? Texts.say("{0}, from {1}", row.broodCode(), tray)
                : Texts.say("{0}, from {1}, {2}", row.broodCode(), tray, row.size());
    }

    /** "30 days in its pot", or how long it lived there. */
    static String age(PotRow row, Instant now) {
        Instant until = row.life().end().map(PotEvent::at).orElse(now);
        String age = DayWords.age(Duration.between(row.potted(), until));
        return row.isAlive()
                ? Texts.say("{0} in its pot", age)
                : Texts.say("{0} after {1} in its pot", row.state().word(), age);
    }

    /** Where the ledger of a brood holds another number in pots than the register shows alive; empty where none does. */
    static String disagreement(RoomView room, List<PotRow> rows) {
        List<String> sentences = new ArrayList<>();
        Map<String, Long> living = rows.stream()
                .filter(PotRow::isAlive)
                .collect(Collectors.groupingBy(PotRow::broodCode, Collectors.counting()));
        room.broods().forEach(brood -> {
            long alive = living.getOrDefault(brood.code(), 0L);
            int inLedger = brood.record().ledger().balance(Account.POTTED);
            if (alive != inLedger) {
                sentences.add(
                        Texts.say("{0}: {1} alive here, {2} in pots by its ledger.", brood.code(), alive, inLedger));
            }
        });
        return String.join(" ", sentences);
    }

    private static long count(List<PotRow> rows, PotState state) {
        return rows.stream().filter(row -> row.state() == state).count();
    }

    private static int instar(Stage stage) {
        return switch (stage) {
            case EGG, POSTEMBRYO -> 0;
            case INSTAR1, DARKENED -> 1;
            case INSTAR2 -> 2;
        };
    }
}
