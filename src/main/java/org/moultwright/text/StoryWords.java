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
            return "Sac pulled from the mother";
        }
        if (event instanceof StoryEvent.Opened opened) {
            return "Sac opened: %s%d animals into %s"
                    .formatted(opened.isEstimate() ? "about " : "", opened.count(), list(opened.trays()));
        }
        if (event instanceof StoryEvent.FirstSeen seen) {
            return firstSeen(seen);
        }
        if (event instanceof StoryEvent.Lost lost) {
            return lost(lost);
        }
        if (event instanceof StoryEvent.Potted potted) {
            return "%d potted from %s".formatted(potted.count(), potted.tray());
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
            return photographed.photos() == 1
                    ? "Photo of " + photographed.tray()
                    : "%d photos of %s".formatted(photographed.photos(), photographed.tray());
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
        String what = capital(event.what().replace('-', ' '));
        return event.note().isBlank() ? what : what + ": " + event.note();
    }

    private String laid(InstantRange range) {
        return range.width().compareTo(Duration.ofDays(1)) <= 0
                ? "Sac laid"
                : "Sac laid some time from " + days.days(range.earliest(), range.latest());
    }

    private String firstSeen(StoryEvent.FirstSeen seen) {
        String stages = vocabulary.plural(seen.stage());
        if (seen.counts().size() < seen.trays().size()) {
            return "First %s seen in %s".formatted(stages, list(seen.trays()));
        }
        return "First %s: %s"
                .formatted(
                        stages,
                        seen.trays().stream()
                                .map(tray -> seen.counts().get(tray) + " in " + tray)
                                .collect(Collectors.joining(", ")));
    }

    private static String lost(StoryEvent.Lost lost) {
        if (lost.tray().equals(Account.SAC.code())) {
            String what =
                    lost.cause().equals(Cause.MOULD) ? "mouldy" : lost.cause().words();
            return "%d %s in the sac".formatted(lost.count(), what);
        }
        if (lost.cause().equals(Cause.INFERTILE)) {
            return "%d infertile taken out of %s".formatted(lost.count(), lost.tray());
        }
        if (lost.cause().equals(Cause.MOULD)) {
            return "%d lost to mould, %s".formatted(lost.count(), lost.tray());
        }
        String words = lost.cause().equals(Cause.UNKNOWN)
                ? "dead, cause unknown"
                : lost.cause().words();
        return "%d %s, %s".formatted(lost.count(), words, lost.tray());
    }

    private static String leftPots(StoryEvent.LeftPots left) {
        if (left.cause().equals(Cause.DIED_IN_POT)) {
            return left.count() == 1 ? "1 died in its pot" : left.count() + " died in their pots";
        }
        return "%d potted: %s".formatted(left.count(), left.cause().words());
    }

    private static String recounted(StoryEvent.Recounted recounted) {
        int change = recounted.change();
        return "Earlier miscount put right in %s: %d %s"
                .formatted(recounted.tray(), Math.abs(change), change > 0 ? "more" : "fewer");
    }

    private static String mould(MouldNote note) {
        String action = note.action().isBlank() ? "" : "; " + note.action();
        return "Mould on %s in %s, %s%s".formatted(note.where(), note.tray(), note.extent(), action);
    }

    private String silent(StoryEvent.ProbeSilent silent) {
        boolean withinTwoDays = silent.length().compareTo(Duration.ofHours(36)) < 0;
        String until = withinTwoDays
                ? days.clock(silent.until())
                : days.shortDay(silent.until()) + ", " + days.clock(silent.until());
        return "Probe %s silent %s to %s; warm-days filled from the set-point"
                .formatted(silent.probe(), days.clock(silent.at()), until);
    }

    /** Give or take two standard uncertainties. */
    private String calibrated(StoryEvent.Calibrated calibrated) {
        return String.format(
                Locale.ROOT,
                "Probe %s calibrated: reads %.2f °C too %s, give or take %.2f; corrected from %s on",
                calibrated.probe(),
                Math.abs(calibrated.tooHighCelsius()),
                calibrated.tooHighCelsius() < 0 ? "low" : "high",
                2 * calibrated.sdCelsius(),
                days.day(calibrated.since()));
    }

    private static String setPoint(StoryEvent.SetPointChanged changed) {
        return String.format(
                Locale.ROOT,
                "Set-point of %s %s from %.1f to %.1f °C",
                changed.container(),
                changed.toCelsius() > changed.fromCelsius() ? "raised" : "lowered",
                changed.fromCelsius(),
                changed.toCelsius());
    }

    private static String list(List<String> names) {
        return Listing.and(names);
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}
