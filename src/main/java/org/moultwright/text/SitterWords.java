package org.moultwright.text;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.moultwright.compute.forecast.InstantInterval;
import org.moultwright.compute.forecast.MoultForecast;
import org.moultwright.language.Degrees;
import org.moultwright.language.Texts;

/**
 * What whoever looks after the animals has to know, in words of every day.
 *
 * <p>All advice is common practice, no source.
 *
 * @param vocabulary the names of the stages
 * @param days the keeper's days
 */
public record SitterWords(Vocabulary vocabulary, DayWords days) {
    /** What is rarer is not worth a word. */
    private static final double WORTH_A_WORD = 0.05;

    private static final double RATHER_THAN_NOT = 0.5;

    public static final String TITLE = Texts.say("While the keeper is away");

    private static final String WASH = Texts.say("Wash your hands and put gloves on.");
    private static final String LOOK = Texts.say("Look at every tray, one after the other as they are listed.");
    private static final String DEAD = Texts.say("Lift out the dead with tweezers: curled up, dark and still, or furry "
            + "with mould. Write down how many.");
    private static final String WATER =
            Texts.say("Touch the liner's corner. If it is dry, wet the corner, never the animals. Damp, not wet.");
    private static final String WASH_AGAIN = Texts.say("Take the gloves off inside out and wash your hands.");

    /** What to do each day, where there is a line for what the display reads. */
    public static final List<String> TO_DO = List.of(
            WASH,
            LOOK,
            DEAD,
            WATER,
            Texts.say("Close the lid. Read the display and write it down beside the day."),
            WASH_AGAIN);

    /** The same at the desk, where no reading is written. */
    public static final List<String> TO_DO_AT_THE_DESK = List.of(
            WASH,
            LOOK,
            DEAD,
            WATER,
            Texts.say("Close the lid. Read the display: if it is off, call the keeper."),
            WASH_AGAIN);

    public static final List<String> NEVER = List.of(
            Texts.say("Do not open pots."),
            Texts.say("Nothing with bare hands, nothing near your eyes: hairs itch and harm eyes. If it burns, "
                    + "rinse with water and see a doctor."),
            Texts.say("Mains and water: keep wet hands and the water bottle away from plugs, cables and the "
                    + "heater. If it smells of burning, pull the main plug first."),
            Texts.say("Do not feed. Do not turn the heat up or down."));

    private static final String WINDOW =
            Texts.say("Days are windows that hold 8 outcomes of 10: one time in ten it comes earlier, one time "
                    + "in ten later.");

    /**
     * When to call the keeper.
     *
     * @param displays what the displays usually read, if that is known
     */
    public static List<String> call(Optional<String> displays) {
        return List.of(
                Texts.say("More than three dead in one tray in one day."),
                Texts.say("White, grey or green fluff anywhere in a tray."),
                Texts.say(
                        "The display is {0} or more off. It usually reads {1}.",
                        Degrees.apartWords(2, 0), displays.orElse("_________ " + Degrees.symbol())),
                Texts.say("The power was off, or something is wet that should not be."),
                Texts.say("Something is loose, or you are not sure."));
    }

    /** "Days are windows...", and what the word for the last stage means. */
    public String note(MoultForecast any) {
        return String.join(
                " ",
                WINDOW,
                Texts.say("{0} are the small spiders that walk about freely.", capital(vocabulary.plural(any.into()))));
    }

    /** The same where nothing is known of any tray. */
    public static String note() {
        return WINDOW;
    }

    /** "Saturday 9 May to Saturday 16 May". */
    public String dates(Instant from, Instant lastDay) {
        String first = days.longDay(from);
        String last = days.longDay(lastDay);
        return first.equals(last) ? first : Texts.say("{0} to {1}", first, last);
    }

    /**
     * What may happen in a tray between two instants.
     *
     * @param moult when its animals enter the last stage; empty where too little is known
     * @param partBy when they are to be parted, if that is known
     */
    public String expected(Optional<MoultForecast> moult, Optional<Instant> partBy, Instant from, Instant to) {
        if (moult.isEmpty()) {
            return Texts.say("Too early to say. Look well.");
        }
        String stages = vocabulary.plural(moult.get().into());
        List<String> likely = new ArrayList<>();
        List<String> perhaps = new ArrayList<>();
        Sorting sorting = new Sorting(from, to, likely, perhaps);
        if (!moult.get().hasBegun()) {
            sort(moult.get().first(), sorting, when -> Texts.say("first {0} {1}", stages, when));
        }
        sort(moult.get().half(), sorting, when -> Texts.say("half are {0} {1}", stages, when));
        sort(moult.get().most(), sorting, when -> Texts.say("nearly all are {0} {1}", stages, when));
        List<String> sentences = new ArrayList<>();
        before(moult.get(), stages, from).ifPresent(sentences::add);
        if (!likely.isEmpty()) {
            sentences.add(Texts.say("Expect: {0}.", String.join(", ", likely)));
        }
        if (!perhaps.isEmpty()) {
            sentences.add(Texts.say("Perhaps: {0}.", String.join(", ", perhaps)));
        }
        if (sentences.isEmpty()) {
            sentences.add(Texts.say("Nothing special."));
        }
        partBy.filter(due -> due.isBefore(to))
                .map(due -> days.day(due.isBefore(from) ? from : due))
                .map(day -> Texts.say("From {0} on they may have to be kept apart: call that day.", day))
                .ifPresent(sentences::add);
        return String.join(" ", sentences);
    }

    /** What will have happened before the first day, or has already. */
    private Optional<String> before(MoultForecast moult, String stages, Instant from) {
        String day = days.day(from);
        if (isOver(moult.most(), from)) {
            return Optional.of(Texts.say("Nearly all are {0} before {1}.", stages, day));
        }
        if (isOver(moult.half(), from)) {
            return Optional.of(Texts.say("Half are {0} before {1}.", stages, day));
        }
        if (moult.hasBegun()) {
            return Optional.of(Texts.say("{0} are in it already.", capital(stages)));
        }
        return isOver(moult.first(), from)
                ? Optional.of(Texts.say("The first {0} come before {1}.", stages, day))
                : Optional.empty();
    }

    private static boolean isOver(InstantInterval when, Instant from) {
        return when.chanceBy(from) > 1 - WORTH_A_WORD;
    }

    private void sort(InstantInterval when, Sorting sorting, UnaryOperator<String> said) {
        double chance = when.chanceBetween(sorting.from(), sorting.to());
        if (chance >= WORTH_A_WORD) {
            (chance >= RATHER_THAN_NOT ? sorting.likely() : sorting.perhaps())
                    .add(said.apply(days.days(when.p10(), when.p90())));
        }
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    /** What falls between two instants, by how likely it is. */
    private record Sorting(Instant from, Instant to, List<String> likely, List<String> perhaps) {}
}
