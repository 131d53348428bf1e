package org.moultwright.text;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.moultwright.compute.forecast.BroodForecast;
import org.moultwright.compute.forecast.CountInterval;
import org.moultwright.compute.forecast.ForecastNote;
import org.moultwright.compute.forecast.InstantInterval;
import org.moultwright.compute.forecast.MoultForecast;
import org.moultwright.compute.forecast.TrayForecast;
import org.moultwright.domain.Stage;
import org.moultwright.language.Numbers;
import org.moultwright.language.Texts;

/**
 * Forecasts in sentences. Windows are the 80 % intervals.
 *
 * @param vocabulary the names of the stages
 * @param days the keeper's days
 */
public record ForecastWords(Vocabulary vocabulary, DayWords days) {
    private static final String TOO_EARLY =
            Texts.say("Too early to say: nothing has moulted yet and no earlier brood of this species is known.");

    private static final String NOTHING_TO_FORETELL = Texts.say("nothing to foretell");
    private static final String NOT_FORESEEABLE = Texts.say("in more than a year, if at all");

    /** "A1: half are slings between 3 and 6 May." The last stage is what a keeper waits for. */
    public String sentence(TrayForecast tray, Instant now) {
        return last(tray)
                .map(moult -> tray.tray() + ": " + half(moult, now) + ".")
                .orElseGet(() -> tray.tray() + ": " + (holdsAny(tray) ? TOO_EARLY : NOTHING_TO_FORETELL + "."));
    }

    /** "half are slings 3 to 6 May", short enough to stand beside a lane. */
    public String phrase(TrayForecast tray, Instant now) {
        return last(tray)
                .map(moult -> isPast(moult.half(), now)
                        ? half(moult, now)
                        : Texts.say("half are {0} {1}", plural(moult), window(moult.half(), now)))
                .orElseGet(() -> holdsAny(tray) ? Texts.say("too early to say") : NOTHING_TO_FORETELL);
    }

    /** "slings 4 to 8 May": when half of each tray become slings, all trays together; empty where none is told. */
    public Optional<String> brood(BroodForecast forecast, Instant now) {
        List<MoultForecast> coming = forecast.trays().stream()
                .flatMap(tray -> last(tray).stream())
                .filter(moult -> !isPast(moult.half(), now))
                .toList();
        Optional<Instant> from =
                coming.stream().map(moult -> moult.half().p10()).min(Instant::compareTo);
        Optional<Instant> to = coming.stream().map(moult -> moult.half().p90()).max(Instant::compareTo);
        return from.flatMap(first ->
                to.map(last -> "%s %s".formatted(vocabulary.plural(forecast.yieldInto()), days.days(first, last))));
    }

    /** The three windows of one moult, a line each; one that is over says so. */
    public List<String> windows(MoultForecast moult, Instant now) {
        String stages = plural(moult);
        return List.of(
                hasBegun(moult)
                        ? Texts.say("first {0}: there already", stages)
                        : window(Texts.say("first {0}", stages), moult.first(), now),
                window(Texts.say("half are {0}", stages), moult.half(), now),
                window(Texts.say("95 % are {0}", stages), moult.most(), now));
    }

    /** "slings since 12 April": what has been, short enough to stand in a row of a lane. */
    public String since(MoultForecast moult, Instant at) {
        return Texts.say("{0} since {1}", plural(moult), days.day(at));
    }

    /** "slings there, day not known": the same where nobody wrote down when they were first seen. */
    public String there(MoultForecast moult) {
        return Texts.say("{0} there, day not known", plural(moult));
    }

    /** Whether the first animal is known to have entered the stage: then no day is foretold for it. */
    public static boolean hasBegun(MoultForecast moult) {
        return moult.hasBegun();
    }

    /** "103 to 106", or one number where both ends round to it. */
    public static String count(CountInterval count) {
        long low = Math.round(count.p10());
        long high = Math.round(count.p90());
        return low == high ? Long.toString(low) : Texts.say("{0} to {1}", low, high);
    }

    /** "slings", or "sling" where one is counted. */
    public String stages(CountInterval count, Stage stage) {
        return Math.round(count.p10()) == 1 && Math.round(count.p90()) == 1
                ? vocabulary.singular(stage)
                : vocabulary.plural(stage);
    }

    /** When a tray should be emptied into pots, if it has animals that have yet to become the last stage. */
    public Optional<String> separation(TrayForecast tray, Instant now) {
        return last(tray)
                .filter(moult -> !isPast(moult.most(), now))
                .map(moult -> hasBegun(moult) || isPast(moult.first(), now)
                        ? Texts.say(
                                "{0}: first {1} are there. Separate within about a week of them.",
                                tray.tray(), plural(moult))
                        : Texts.say(
                                "{0}: first {1} {2}. Separate within about a week of them.",
                                tray.tray(), plural(moult), window(moult.first(), now)));
    }

    public String note(ForecastNote note) {
        String subject = note.subject();
        long count = Math.round(note.value());
        return switch (note.kind()) {
            case TOO_LITTLE_TO_GO_ON ->
                subject.isEmpty()
                        ? Texts.say("Too little to go on: neither the laying nor an opening or a look is written down.")
                        : about(
                                subject,
                                Texts.say("None was put in and none counted in full; nothing can be told of it."));
            case LAID_LATER -> Texts.say("The laying is written down for a later day; nothing can be told before it.");
            case SAC_UNOPENED ->
                Texts.say(
                        "Nobody has opened the sac: its dates come from the laying, the belief and the "
                                + "temperature alone, and the yield is unknown. First and 95 % are as of {0} eggs.",
                        count);
            case AGES_FROM_FIRST_CHECK -> Texts.say("Laying is not written down: ages count from the first check.");
            case GENERAL_TIMING_ASSUMED ->
                Texts.say("No timing is known for this species: the general one is assumed, an assumption.");
            case SET_POINT_STANDS_IN -> about(subject, Texts.say("No probe reading; the set-point stands in."));
            case EXTREMES_STAND_IN ->
                about(
                        subject,
                        Texts.say("For some of the time known only by its lowest and highest, which widens dates."));
            case REFERENCE_TEMPERATURE_STANDS_IN ->
                about(subject, Texts.say("Neither reading nor set-point; the reference temperature stands in."));
            case GAPS_FILLED ->
                about(
                        subject,
                        Texts.say(
                                "{0} % of the time was not measured and is filled from the set-point.",
                                Numbers.fixed(note.value(), 0)));
            case COUNTS_DISAGREE ->
                about(
                        subject,
                        Texts.count(
                                count,
                                "Counts and ledger disagree by {0} animal.",
                                "Counts and ledger disagree by {0} animals.",
                                count));
            case LAST_COUNT_OFF ->
                about(
                        subject,
                        Texts.say(
                                "The last full count is {0} animals off; count again, or write down what became of them.",
                                count));
            case OPENED_BEFORE_LAYING ->
                Texts.say("The sac was opened before it was laid, as written down; one of the days is wrong.");
            case HARDLY_DEVELOPS ->
                about(subject, Texts.say("At the temperatures to come hardly anything develops; look at the climate."));
            case CHECKS_BEFORE_LAYING ->
                Texts.count(
                        count, "{0} check before laying passed over.", "{0} checks before laying passed over.", count);
            case NONE_ALIVE -> about(subject, Texts.say("Nobody is left alive."));
            case COUNTS_BEYOND_MODEL ->
                about(
                        subject,
                        Texts.say("Its counts scatter more than the model can explain; do not rely on its dates."));
            case INTERVALS_WIDENED ->
                Texts.say(
                        "Forecasts of earlier broods were off by more than they said; the days given are {0} % wider apart.",
                        count);
            case COARSE_POSTERIOR -> Texts.say("Computed the slower, coarser way: intervals are rough.");
        };
    }

    private static String about(String subject, String sentence) {
        return subject.isEmpty() ? sentence : subject + ": " + sentence;
    }

    private String half(MoultForecast moult, Instant now) {
        return isPast(moult.half(), now)
                ? Texts.say(
                        "half were {0} by {1}",
                        plural(moult), days.day(moult.half().p50()))
                : Texts.say(
                        "half are {0} {1}",
                        plural(moult), moult.half().isFarFrom(now) ? NOT_FORESEEABLE : between(moult.half()));
    }

    private String window(String what, InstantInterval interval, Instant now) {
        return isPast(interval, now)
                ? Texts.say("{0}: {1}, past", what, window(interval))
                : "%s: %s".formatted(what, window(interval, now));
    }

    private String window(InstantInterval interval, Instant now) {
        return interval.isFarFrom(now) ? NOT_FORESEEABLE : window(interval);
    }

    private String window(InstantInterval interval) {
        return days.days(interval.p10(), interval.p90());
    }

    /** "between 3 and 6 May", "on 4 May". */
    private String between(InstantInterval interval) {
        String from = days.day(interval.p10());
        String to = days.day(interval.p90());
        return from.equals(to) ? Texts.say("on {0}", to) : days.between(interval.p10(), interval.p90());
    }

    private String plural(MoultForecast moult) {
        return vocabulary.plural(moult.into());
    }

    private static boolean isPast(InstantInterval interval, Instant now) {
        return !interval.p90().isAfter(now);
    }

    private static boolean holdsAny(TrayForecast tray) {
        return Math.round(tray.expectedAlive()) > 0;
    }

    private static Optional<MoultForecast> last(TrayForecast tray) {
        return tray.moults().stream().max((a, b) -> a.into().compareTo(b.into()));
    }
}
