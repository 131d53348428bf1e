package org.moultwright.ui.takealong;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.moultwright.language.Texts;
import org.moultwright.text.DayWords;
import org.moultwright.text.Listing;
import org.moultwright.ui.control.Tone;
import org.moultwright.ui.shell.Notice;
import org.moultwright.workflow.SittersWork.Written;

/**
 * What a sitter wrote, for the keeper who is back.
 *
 * @param since when the desk was handed over
 * @param written all that stands of it
 */
record SittersReport(Optional<Instant> since, List<Written> written) {
    /** More are counted, not named. */
    private static final int TRAYS_NAMED = 6;

    private static final String WHERE = Texts.say("Whether the sitter called is written nowhere.");

    Notice notice(DayWords days) {
        String from = since.map(at -> Texts.say("Since {0}, {1}.", days.shortDay(at), days.clock(at)) + " ")
                .orElse("");
        return written.isEmpty()
                ? new Notice(Tone.ACCENT, Texts.say("The sitter wrote nothing down."), from + WHERE)
                : new Notice(
                        Tone.ACCENT,
                        Texts.say("The sitter wrote down: {0}.", String.join(", ", parts())),
                        from + WHERE,
                        true);
    }

    private List<String> parts() {
        List<String> parts = new ArrayList<>();
        int dead = written.stream().mapToInt(Written::dead).sum();
        if (dead > 0) {
            parts.add(Texts.say("{0} dead ({1})", dead, Listing.few(deadByTray(), TRAYS_NAMED)));
        }
        int water = (int) written.stream().filter(press -> press.dead() == 0).count();
        if (water > 0) {
            parts.add(Texts.count(water, "water given once", "water given {0} times", water));
        }
        return parts;
    }

    /** "A1 2": the tray with most dead first. */
    private List<String> deadByTray() {
        Map<String, Integer> byTray = written.stream()
                .filter(press -> press.dead() > 0)
                .collect(Collectors.groupingBy(Written::tray, TreeMap::new, Collectors.summingInt(Written::dead)));
        return byTray.entrySet().stream()
                .sorted(Map.Entry.<String, Integer>comparingByValue().reversed())
                .map(tray -> tray.getKey() + " " + tray.getValue())
                .toList();
    }
}
