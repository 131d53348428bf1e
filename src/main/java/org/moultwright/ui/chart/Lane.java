package org.moultwright.ui.chart;

import java.time.Instant;
import java.util.List;
import org.moultwright.domain.Stage;
import org.moultwright.language.Texts;

/** The windows of one tray, for the three rows of a lane. */
public record Lane(List<Window> windows) {
    public Lane {
        windows = List.copyOf(windows);
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
     */
    public record Window(Row row, Stage into, Instant from, Instant middle, Instant to, boolean isPast) {}

    /** Days on which nobody is there. */
    public record Absence(Instant from, Instant to, String words) {}
}
