package org.moultwright.text;

import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.moultwright.compute.history.StoryEvent;
import org.moultwright.domain.Account;
import org.moultwright.domain.Cause;
import org.moultwright.domain.InstantRange;
import org.moultwright.domain.MouldNote;
import org.moultwright.domain.RunUpEvent;
import org.moultwright.language.Degrees;
import org.moultwright.language.Texts;

/**
 * The events of a brood's story, one line each.
 *
 * @param vocabulary the names of the stages
 * @param days the keeper's days
 */
public record StoryWords(Vocabulary vocabulary, DayWords days) {

    public String line(StoryEvent event) {
        if (event instanceof StoryEvent.RunUp runUp) {
            return runUp(runUp.event());
        }
        if (event instanceof StoryEvent.Laid laid) {
            return laid(laid.range());
        }
        if (event instanceof StoryEvent.Pulled) {
            return Texts.say("Sac pulled from the mother");
        }
        if (event instanceof StoryEvent.Opened opened) {
            return opened.isEstimate()
                    ? Texts.say("Sac opened: about {0} animals into {1}", opened.count(), list(opened.trays()))
                    : Texts.say("Sac opened: {0} animals into {1}", opened.count(), list(opened.trays()));
        }
        if (event instanceof StoryEvent.FirstSeen seen) {
            return firstSeen(seen);
        }
        if (event instanceof StoryEvent.Lost lost) {
            return lost(lost);
        }
        if (event instanceof StoryEvent.Potted potted) {
            return Texts.say("{0} potted from {1}", potted.count(), potted.tray());
        }
        if (event instanceof StoryEvent.LeftPots left) {
            return leftPots(left);
        }
        if (event instanceof StoryEvent.Recounted recounted) {
            return recounted(recounted);
        }
        if (event instanceof StoryEvent.Mould mould) {
            return mould(mould.note());
        }
        if (event instanceof StoryEvent.Photographed photographed) {
            return Texts.count(
                    photographed.photos(),
                    "Photo of {1}",
                    "{0} photos of {1}",
                    photographed.photos(),
                    photographed.tray());
        }
        if (event instanceof StoryEvent.ProbeSilent silent) {
            return silent(silent);
        }
        if (event instanceof StoryEvent.Calibrated calibrated) {
            return calibrated(calibrated);
        }
        if (event instanceof StoryEvent.SetPointChanged changed) {
            return setPoint(changed);
        }
        throw new IllegalArgumentException("event is " + event + " but has no words");
    }

    private static String runUp(RunUpEvent event) {
        String what = capital(Texts.say(event.what().replace('-', ' ')));
        return event.note().isBlank() ? what : what + ": " + event.note();
    }

    private String laid(InstantRange range) {
        return range.width().compareTo(Duration.ofDays(1)) <= 0
                ? Texts.say("Sac laid")
                : Texts.say("Sac laid some time from {0}", days.days(range.earliest(), range.last()));
    }

    private String firstSeen(StoryEvent.FirstSeen seen) {
        String stages = vocabulary.plural(seen.stage());
        if (seen.counts().size() < seen.trays().size()) {
            return Texts.say("First {0} seen in {1}", stages, list(seen.trays()));
        }
        return Texts.say(
                "First {0}: {1}",
                stages,
                seen.trays().stream()
                        .map(tray -> Texts.say("{0} in {1}", seen.counts().get(tray), tray))
                        .collect(Collectors.joining(", ")));
    }

    private static String lost(StoryEvent.Lost lost) {
        if (lost.tray().equals(Account.SAC.code())) {
            String what = lost.cause().equals(Cause.MOULD)
                    ? Texts.say("mouldy")
                    : Texts.say(lost.cause().words());
            return Texts.say("{0} {1} in the sac", lost.count(), what);
        }
        if (lost.cause().equals(Cause.INFERTILE)) {
            return Texts.say("{0} infertile taken out of {1}", lost.count(), lost.tray());
        }
        if (lost.cause().equals(Cause.MOULD)) {
            return Texts.say("{0} lost to mould, {1}", lost.count(), lost.tray());
        }
        String words = lost.cause().equals(Cause.UNKNOWN)
                ? Texts.say("dead, cause unknown")
                : Texts.say(lost.cause().words());
        return "%d %s, %s".formatted(lost.count(), words, lost.tray());
    }

    private static String leftPots(StoryEvent.LeftPots left) {
        if (left.cause().equals(Cause.DIED_IN_POT)) {
            return Texts.count(left.count(), "1 died in its pot", "{0} died in their pots", left.count());
        }
        return Texts.say("{0} potted: {1}", left.count(), Texts.say(left.cause().words()));
    }

    private static String recounted(StoryEvent.Recounted recounted) {
        int change = recounted.change();
        return change > 0
                ? Texts.say("Earlier miscount put right in {0}: {1} more", recounted.tray(), change)
                : Texts.say("Earlier miscount put right in {0}: {1} fewer", recounted.tray(), -change);
    }

    private static String mould(MouldNote note) {
        String where = Texts.say(note.where());
        String extent = Texts.say(note.extent());
        return note.action().isBlank()
                ? Texts.say("Mould on {0} in {1}, {2}", where, note.tray(), extent)
                : Texts.say("Mould on {0} in {1}, {2}; {3}", where, note.tray(), extent, Texts.say(note.action()));
    }

    private String silent(StoryEvent.ProbeSilent silent) {
        boolean withinTwoDays = silent.length().compareTo(Duration.ofHours(36)) < 0;
        String until = withinTwoDays
                ? days.clock(silent.until())
                : days.shortDay(silent.until()) + ", " + days.clock(silent.until());
        return Texts.say(
                "Probe {0} silent {1} to {2}; warm-days filled from the set-point",
                silent.probe(), days.clock(silent.at()), until);
    }

    /** Give or take two standard uncertainties. */
    private String calibrated(StoryEvent.Calibrated calibrated) {
        return Texts.say(
                calibrated.tooHighCelsius() < 0
                        ? "Probe {0} calibrated: reads {1} too low, give or take {2}; corrected from {3} on"
                        : "Probe {0} calibrated: reads {1} too high, give or take {2}; corrected from {3} on",
                calibrated.probe(),
                Degrees.apartWords(Math.abs(calibrated.tooHighCelsius()), 2),
                Degrees.apart(2 * calibrated.sdCelsius(), 2),
                days.day(calibrated.since()));
    }

    private static String setPoint(StoryEvent.SetPointChanged changed) {
        return Texts.say(
                changed.toCelsius() > changed.fromCelsius()
                        ? "Set-point of {0} raised from {1} to {2}"
                        : "Set-point of {0} lowered from {1} to {2}",
                changed.container(),
                Degrees.number(changed.fromCelsius(), 1),
                Degrees.words(changed.toCelsius(), 1));
    }

    private static String list(List<String> names) {
        return Listing.and(names);
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}
