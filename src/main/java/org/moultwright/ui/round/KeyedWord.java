package org.moultwright.ui.round;

import java.util.List;
import java.util.Optional;
import org.moultwright.domain.CareNote;
import org.moultwright.language.Texts;

/**
 * A word of the sheet and the key that chooses it.
 *
 * @param key in lower case
 * @param text as it is kept
 */
record KeyedWord(char key, String text) {
    static final List<KeyedWord> MOULD_WHERE = List.of(
            new KeyedWord('s', Texts.kept("shells")),
            new KeyedWord('d', Texts.kept("dead animal")),
            new KeyedWord('a', Texts.kept("living animals")),
            new KeyedWord('l', Texts.kept("liner")),
            new KeyedWord('w', Texts.kept("wall")));
    static final List<KeyedWord> MOULD_EXTENT = List.of(
            new KeyedWord('k', Texts.kept("speck")),
            new KeyedWord('p', Texts.kept("patch")),
            new KeyedWord('x', Texts.kept("spread")));
    static final List<KeyedWord> MOULD_ACTION = List.of(
            new KeyedWord('e', Texts.kept("removed")),
            new KeyedWord('v', Texts.kept("vented")),
            new KeyedWord('i', Texts.kept("isolated")),
            new KeyedWord('q', Texts.kept("left, watched")));
    static final List<KeyedWord> CARE = List.of(
            new KeyedWord('w', CareNote.WATERED),
            new KeyedWord('c', CareNote.CLEANED),
            new KeyedWord('r', CareNote.TURNED),
            new KeyedWord('l', CareNote.LINER_CHANGED));

    /** The word in the keeper's language; what is kept is {@link #text}. */
    String shown() {
        return Texts.say(text);
    }

    static Optional<KeyedWord> ofKey(List<KeyedWord> words, char key) {
        return words.stream().filter(word -> word.key == key).findFirst();
    }
}
