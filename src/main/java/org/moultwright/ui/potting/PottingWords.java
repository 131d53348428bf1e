package org.moultwright.ui.potting;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.moultwright.compute.forecast.InstantInterval;
import org.moultwright.compute.forecast.MoultForecast;
import org.moultwright.compute.forecast.TrayForecast;
import org.moultwright.domain.Stage;
import org.moultwright.text.DayWords;
import org.moultwright.text.ForecastWords;
import org.moultwright.text.Vocabulary;
import org.moultwright.workflow.PotLabel;
import org.moultwright.workflow.TrayView;

/** The sentences of the potting bench. */
final class PottingWords {
    static final String PREFIX_RULE = "Like 26A, without I, L, O, U.";
    static final String UNDONE = "Taken back: the animals are in their trays again.";

    private PottingWords() {}

    /** Separating within a week of the first slings is common practice, no source. */
    static String subtitle(DayWords days, Instant now, Vocabulary names, Stage stage) {
        return days.longDay(now) + " · separate within about a week of the first " + names.plural(stage);
    }

    /** "22 slings ready", or "none yet". */
    static String ready(Taking taking, Vocabulary names, Stage stage) {
        if (taking.ready() == 0) {
            return "none yet";
        }
        return taking.ready() == 1
                ? "1 " + one(names, stage) + " ready"
                : taking.ready() + " " + names.plural(stage) + " ready";
    }

    /** "34 stay, 22 of them dark nymphs", "first about 9 May", or a caution where more are taken than were seen. */
    static String stay(Taking taking, Stage stage, Vocabulary names, DayWords days) {
        if (taking.taken() > taking.ready()) {
            return "%d more than the last look found".formatted(taking.taken() - taking.ready());
        }
        if (taking.ready() == 0) {
            return firstInto(taking.tray(), stage)
                    .map(first -> "first about " + days.day(first.p50()))
                    .orElse("");
        }
        int stay = taking.tray().alive() - taking.taken();
        int dark = taking.tray().composition().getOrDefault(Stage.DARKENED, 0);
        return dark == 0 || dark > stay
                ? stay + " stay"
                : "%d stay, %d of them %s".formatted(stay, dark, names.plural(Stage.DARKENED));
    }

    static String tooMany(TrayView tray) {
        return "%s holds %d.".formatted(tray.tray(), tray.alive());
    }

    /** "33 taken = 32 potted + 1 dead or lost + 0 unexplained". */
    static String balance(int taken, int potted, int lost) {
        return "%d taken = %d potted + %d dead or lost + %d unexplained"
                .formatted(taken, potted, lost, taken - potted - lost);
    }

    /** What to do with the balance: labels left over, or what does not add up. */
    static String balanceDetail(List<Taking> takings, List<PotLabel> leftOver) {
        String astray = takings.stream()
                .filter(taking -> !taking.holdsTogether())
                .map(taking -> taking.tray().tray())
                .collect(Collectors.joining(", "));
        if (!astray.isEmpty()) {
            return "Count the pots from " + astray + " again, or say how many died or were lost.";
        }
        if (leftOver.isEmpty()) {
            return "";
        }
        return "Destroy the %s left over: %s."
                .formatted(
                        leftOver.size() == 1 ? "label" : "labels",
                        leftOver.stream().map(PotLabel::code).collect(Collectors.joining(", ")));
    }

    /** "Done, 32 in pots". */
    static String done(int potted) {
        return potted == 1 ? "Done, 1 in a pot" : "Done, " + potted + " in pots";
    }

    /** What stands under the name on a label: "sling 5 May 26", or "sling 5 May 26, 30 ml" with the size of the pot. */
    static String labelLine(Vocabulary names, Stage stage, DayWords days, Instant seen, String potSize) {
        String line = "%s %s %02d"
                .formatted(
                        one(names, stage), days.shortDay(seen), days.date(seen).getYear() % 100);
        return potSize.isBlank() ? line : line + ", " + potSize.strip();
    }

    /** Why there is nothing to pot, and when there will be. */
    static String empty(List<TrayView> trays, Stage stage, Vocabulary names, DayWords days) {
        String stageWords = names.plural(stage);
        if (trays.isEmpty()) {
            return "Nothing to pot. Trays appear here once a sac is opened or a brood folder is taken in.";
        }
        return trays.stream()
                .flatMap(tray -> firstInto(tray, stage).map(first -> new First(tray.tray(), first)).stream())
                .min(Comparator.comparing(first -> first.when().p50()))
                .map(first -> "No %s yet. The first are expected between %s, in %s."
                        .formatted(
                                stageWords,
                                days.days(first.when().p10(), first.when().p90())
                                        .replace(" to ", " and "),
                                first.tray()))
                .orElse("No %s yet, and too early to say when the first come. The round's next looks will tell."
                        .formatted(stageWords));
    }

    /** "32 potted, written down." */
    static String kept(String words) {
        return words + ", written down.";
    }

    /** The label inside a sentence; one such as L1 keeps its capital. */
    private static String one(Vocabulary names, Stage stage) {
        String label = names.label(stage);
        return label.length() > 1 && Character.isLowerCase(label.charAt(1)) ? label.toLowerCase(Locale.ROOT) : label;
    }

    private static Optional<InstantInterval> firstInto(TrayView tray, Stage stage) {
        return tray.forecast().map(TrayForecast::moults).stream()
                .flatMap(List::stream)
                .filter(moult -> moult.into() == stage && !ForecastWords.hasBegun(moult))
                .map(MoultForecast::first)
                .findFirst();
    }

    private record First(String tray, InstantInterval when) {}
}
