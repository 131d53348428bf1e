package org.moultwright.ui.potting;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.moultwright.compute.forecast.InstantInterval;
import org.moultwright.compute.forecast.MoultForecast;
import org.moultwright.domain.Stage;
import org.moultwright.language.Texts;
import org.moultwright.text.DayWords;
import org.moultwright.text.ForecastWords;
import org.moultwright.text.Vocabulary;
import org.moultwright.workflow.PotLabel;
import org.moultwright.workflow.TrayView;

/** The sentences of the potting bench. */
final class PottingWords {
    static final String UNDONE = Texts.say("Taken back: the animals are in their trays again.");

    private PottingWords() {}

    /** Separating within a week of the first slings is common practice, no source. */
    static String subtitle(DayWords days, Instant now, Vocabulary names, Stage stage) {
        return Texts.say("{0} · separate within about a week of the first {1}", days.longDay(now), names.plural(stage));
    }

    /** "22 slings ready", or "none yet". */
    static String ready(Taking taking, Vocabulary names) {
        Stage stage = taking.stage();
        if (taking.ready() == 0) {
            return Texts.say("none yet");
        }
        return Texts.count(
                taking.ready(), "1 {2} ready", "{0} {1} ready", taking.ready(), names.plural(stage), one(names, stage));
    }

    /**
     * "34 stay, 22 of them dark nymphs", "first about 9 May", that they may be there by now, or a caution where more are
     * taken than were seen.
     */
    static String stay(Taking taking, Vocabulary names, DayWords days, Instant now) {
        Stage stage = taking.stage();
        if (taking.taken() > taking.ready()) {
            return Texts.say("{0} more than the last look found", taking.taken() - taking.ready());
        }
        if (taking.ready() == 0) {
            return firstInto(taking.tray(), stage)
                    .map(first -> first.p50().isAfter(now)
                            ? Texts.say("first about {0}", days.day(first.p50()))
                            : Texts.say("first may be there: look"))
                    .orElse("");
        }
        int stay = taking.tray().alive() - taking.taken();
        int dark = taking.tray().composition().getOrDefault(Stage.DARKENED, 0);
        return dark == 0 || dark > stay
                ? Texts.say("{0} stay", stay)
                : Texts.say("{0} stay, {1} of them {2}", stay, dark, names.plural(Stage.DARKENED));
    }

    static String tooMany(TrayView tray) {
        return Texts.say("{0} holds {1}.", tray.tray(), tray.alive());
    }

    /** "33 taken = 32 potted + 1 dead or lost + 0 unexplained". */
    static String balance(int taken, int potted, int lost) {
        int unexplained = taken - potted - lost;
        return unexplained < 0
                ? Texts.say(
                        "{0} taken = {1} potted + {2} dead or lost − {3} unexplained",
                        taken, potted, lost, -unexplained)
                : Texts.say(
                        "{0} taken = {1} potted + {2} dead or lost + {3} unexplained",
                        taken, potted, lost, unexplained);
    }

    /** What to do with the balance: labels left over, or what does not add up. */
    static String balanceDetail(Bench bench, List<PotLabel> leftOver) {
        String astray = bench.takings().stream()
                .filter(taking -> !taking.holdsTogether())
                .map(bench::name)
                .collect(Collectors.joining(", "));
        if (!astray.isEmpty()) {
            return Texts.say("Count the pots from {0} again, or say how many died or were lost.", astray);
        }
        if (leftOver.isEmpty()) {
            return "";
        }
        return Texts.say(
                "Destroy the {0} left over: {1}.",
                Texts.count(leftOver.size(), "label", "labels"),
                leftOver.stream().map(PotLabel::code).collect(Collectors.joining(", ")));
    }

    /** The size of pots where it is one of several. */
    static String size(String potSize) {
        return potSize.isEmpty() ? Texts.say("no size written") : potSize;
    }

    /** "Into pots: 20 of 30 ml, 13 of 60 ml"; empty where all are of one size. */
    static String bySize(Map<String, Integer> potted) {
        return potted.size() < 2
                ? ""
                : Texts.say(
                        "Into pots: {0}.",
                        potted.entrySet().stream()
                                .map(size -> Texts.say("{0} of {1}", size.getValue(), size(size.getKey())))
                                .collect(Collectors.joining(", ")));
    }

    /** "Done, 32 in pots". */
    static String done(int potted) {
        return Texts.count(potted, "Done, 1 in a pot", "Done, {0} in pots", potted);
    }

    /** A stage and the day it was reached, as on a label: "sling 5 May 26". */
    static String reached(Vocabulary names, Stage stage, DayWords days, Instant seen) {
        return "%s %s %02d"
                .formatted(
                        one(names, stage), days.shortDay(seen), days.date(seen).getYear() % 100);
    }

    /** Nothing is ready, and it is not known yet when there will be. */
    static String awaitsDates(Vocabulary names, Stage stage) {
        return Texts.say(
                "No {0} are counted in the trays now. When they come is being worked out.", names.plural(stage));
    }

    /** Why there is nothing to pot, and when there will be. */
    static String empty(List<TrayView> trays, Stage stage, Vocabulary names, DayWords days, Instant now) {
        String stageWords = names.plural(stage);
        if (trays.isEmpty()) {
            return Texts.say("Nothing to pot. Trays appear here once a sac is opened or a brood folder is taken in.");
        }
        Optional<String> more = next(
                        trays,
                        tray -> halfInto(tray, stage).filter(half -> half.p90().isAfter(now)))
                .map(next -> Texts.say(
                        "No {0} are counted in the trays now. Half of {1} are expected to be {0} {2}.",
                        stageWords,
                        next.tray(),
                        days.between(next.when().p10(), next.when().p90())));
        return more.or(() -> next(trays, tray -> firstInto(tray, stage))
                        .map(first -> expected(first, stageWords, days, now)))
                .orElseGet(() -> anyKnows(trays, stage)
                        ? Texts.say(
                                "No {0} are counted in the trays as they stand. Count them in the round first.",
                                stageWords)
                        : Texts.say(
                                "No {0} yet, and too early to say when the first come. The round's next looks will "
                                        + "tell.",
                                stageWords));
    }

    private static Optional<Next> next(List<TrayView> trays, Function<TrayView, Optional<InstantInterval>> when) {
        return trays.stream()
                .flatMap(tray -> when.apply(tray).map(at -> new Next(tray.tray(), at)).stream())
                .min(Comparator.comparing(next -> next.when().p50()));
    }

    /** When the first come, or that they should have. */
    private static String expected(Next first, String stageWords, DayWords days, Instant now) {
        return first.when().p90().isAfter(now)
                ? Texts.say(
                        "No {0} yet. The first are expected {1}, in {2}.",
                        stageWords,
                        days.between(first.when().p10(), first.when().p90()),
                        first.tray())
                : Texts.say(
                        "No {0} are counted yet. The first were expected by {1}, in {2}: look in the round.",
                        stageWords, days.day(first.when().p90()), first.tray());
    }

    private static boolean anyKnows(List<TrayView> trays, Stage stage) {
        return trays.stream()
                .flatMap(tray -> tray.forecast().stream())
                .anyMatch(forecast -> forecast.moult(stage).isPresent());
    }

    /** "32 potted, written down." */
    static String kept(String words) {
        return Texts.say("{0}, written down.", words);
    }

    /** The label inside a sentence; one such as L1 keeps its capital. */
    private static String one(Vocabulary names, Stage stage) {
        String label = names.label(stage);
        return label.length() > 1 && Character.isLowerCase(label.charAt(1)) ? label.toLowerCase(Locale.ROOT) : label;
    }

    private static Optional<InstantInterval> firstInto(TrayView tray, Stage stage) {
        return moult(tray, stage)
                .filter(moult -> !ForecastWords.hasBegun(moult))
                .map(MoultForecast::first);
    }

    /** Of a tray whose first are there or gone, and the others still to come. */
    private static Optional<InstantInterval> halfInto(TrayView tray, Stage stage) {
        return moult(tray, stage).filter(ForecastWords::hasBegun).map(MoultForecast::half);
    }

    private static Optional<MoultForecast> moult(TrayView tray, Stage stage) {
        return tray.forecast().flatMap(forecast -> forecast.moult(stage));
    }

    /** A tray, and when something is expected there. */
    private record Next(String tray, InstantInterval when) {}
}
