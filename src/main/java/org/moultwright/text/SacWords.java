package org.moultwright.text;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.moultwright.compute.forecast.InstantInterval;
import org.moultwright.compute.forecast.MoultForecast;
import org.moultwright.compute.forecast.SacForecast;
import org.moultwright.domain.Brood;
import org.moultwright.language.Numbers;
import org.moultwright.language.Texts;

/** What is expected inside an unopened sac, in sentences. */
public record SacWords(Vocabulary vocabulary, DayWords days) {

    /** Why then; common practice, no source. */
    public static final String WHY = Texts.say(
            "while most are thought to be eggs with legs: common practice, no source. Nobody has looked inside.");

    /** "pull 24 March to 10 April", or that those days are over; empty where it is with its mother no more. */
    public Optional<String> pull(SacForecast sac, Brood brood, Instant now) {
        return toBePulled(sac, brood).map(window -> {
            String when = days.days(window.from(), window.to());
            return window.to().isAfter(now) ? Texts.say("pull {0}", when) : Texts.say("pull now, it was due {0}", when);
        });
    }

    /** The same as a sentence of its own. */
    public Optional<String> toPull(SacForecast sac, Brood brood, Instant now) {
        return toBePulled(sac, brood).map(window -> {
            String when = days.days(window.from(), window.to());
            return window.to().isAfter(now)
                    ? Texts.say("To pull: {0}.", when)
                    : Texts.say("To pull: now, it was due {0}.", when);
        });
    }

    /** Also empty where the belief knows no stage with legs. */
    private static Optional<SacForecast.PullWindow> toBePulled(SacForecast sac, Brood brood) {
        return brood.pulled().isPresent() ? Optional.empty() : sac.pull();
    }

    /** "12 days, 10.4 warm-days old". */
    public String age(SacForecast sac) {
        return Texts.say(
                "{0} days, {1} warm-days old",
                Numbers.fixed(Math.floor(sac.days()), 0), Numbers.fixed(sac.warmDays(), 1));
    }

    /** "half are nymphs between 3 and 17 April", by belief alone. */
    public String half(MoultForecast moult) {
        return Texts.say(
                "half are {0} {1}",
                vocabulary.plural(moult.into()),
                days.days(moult.half().p10(), moult.half().p90()));
    }

    /** The windows of one stage, a line each; nobody has seen any of it, so that none is told as past. */
    public List<String> windows(MoultForecast moult) {
        String stages = vocabulary.plural(moult.into());
        return List.of(
                line(Texts.say("first {0}", stages), moult.first()),
                line(Texts.say("half are {0}", stages), moult.half()),
                line(Texts.say("95 % are {0}", stages), moult.most()));
    }

    private String line(String what, InstantInterval when) {
        return what + ": " + days.days(when.p10(), when.p90());
    }
}
