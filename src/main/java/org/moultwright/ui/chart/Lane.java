package org.moultwright.ui.chart;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.moultwright.domain.Stage;
import org.moultwright.language.Texts;

/**
 * The windows of one tray, for the three rows of a lane.
 *
 * @param begun the last stage whose first were never seen to enter it, though they are known to have
 */
public record Lane(List<Window> windows, Optional<Begun> begun) {
    public Lane {
        windows = List.copyOf(windows);
    }

    public Lane(List<Window> windows) {
        this(windows, Optional.empty());
    }

    /**
     * The latest that has been of a row of which nothing stands on a calendar that begins then; there it is told in words,
     * for an empty row would say that nothing has been. Of several stages entered on one day it is the last, and a later
     * stage that was entered on a day nobody knows is told before all.
     */
    Optional<String> words(Row row, Instant from) {
        List<Window> ofRow =
                windows.stream().filter(window -> window.row() == row).toList();
        if (!ofRow.stream()
                .allMatch(window -> window.isPast() && window.middle().isBefore(from))) {
            return Optional.empty();
        }
        Optional<Window> latest =
                ofRow.stream().max(Comparator.comparing(Window::middle).thenComparing(Window::into));
        return begun.filter(first -> row == Row.FIRST)
                .filter(first -> latest.filter(dated -> dated.into().isAtLeast(first.into()))
                        .isEmpty())
                .map(Begun::words)
                .or(() -> latest.map(Window::since));
    }

    /** Which of those that enter a stage a window is about; each has a row of its own, in this order. */
    public enum Row {
        FIRST(Texts.say("first")),
        HALF(Texts.say("half")),
        MOST("95 %");

        private final String word;

        Row(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    /**
     * An 80 % window.
     *
     * @param into the stage entered
     * @param isPast whether it has happened: then it is a mark on its day
     * @param since the same in words, such as "slings since 12 April"
     */
    public record Window(Row row, Stage into, Instant from, Instant middle, Instant to, boolean isPast, String since) {}

    /**
     * A stage entered on a day nobody wrote down.
     *
     * @param words such as "slings there, day not known"
     */
    public record Begun(Stage into, String words) {}

    /** Days on which nobody is there. */
    public record Absence(Instant from, Instant to, String words) {}
}
