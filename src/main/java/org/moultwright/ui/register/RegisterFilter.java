package org.moultwright.ui.register;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.moultwright.language.Texts;

/**
 * Which pots are shown.
 *
 * @param words what words of each shown pot begin with, all of them; a space before each
 * @param kind which sort of pots
 */
record RegisterFilter(List<String> words, Kind kind) {
    static final RegisterFilter EVERYTHING = of("", Kind.ALL);

    /** The sorts of pots that can be shown alone. */
    enum Kind {
        ALL(Texts.say("All")),
        ALIVE(Texts.say("Alive")),
        DEAD(Texts.say("Dead")),
        HANDED_OVER(Texts.say("Handed over")),
        SELECTED(Texts.say("Selected"));

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        String word() {
            return word;
        }
    }

    static RegisterFilter of(String typed, Kind kind) {
        return new RegisterFilter(
                Stream.of(typed.toLowerCase(Locale.ROOT).split("\\s+", -1))
                        .filter(word -> !word.isEmpty())
                        .map(word -> " " + word)
                        .toList(),
                kind);
    }

    boolean shows(PotRow row, PotMarks marks) {
        return isOfKind(row, marks) && words.stream().allMatch(row.words()::contains);
    }

    private boolean isOfKind(PotRow row, PotMarks marks) {
        return switch (kind) {
            case ALL -> true;
            case ALIVE -> row.state() == PotState.ALIVE;
            case DEAD -> row.state() == PotState.DEAD;
            case HANDED_OVER -> row.state() == PotState.HANDED_OVER;
            case SELECTED -> marks.has(row.code());
        };
    }
}
