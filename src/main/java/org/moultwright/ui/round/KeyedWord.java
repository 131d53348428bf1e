package org.moultwright.ui.round;

import java.util.List;
import java.util.Optional;
import org.moultwright.domain.CareNote;

/**
 * A word of the sheet and the key that chooses it.
 *
 * @param key in lower case
 */
record KeyedWord(char key, String text) {
    static final List<KeyedWord> MOULD_WHERE = List.of(
            new KeyedWord('s', "shells"),
            new KeyedWord('d', "dead animal"),
            new KeyedWord('a', "living animals"),
            new KeyedWord('l', "liner"),
            new KeyedWord('w', "wall"));
    static final List<KeyedWord> MOULD_EXTENT =
            List.of(new KeyedWord('k', "speck"), new KeyedWord('p', "patch"), new KeyedWord('x', "spread"));
    static final List<KeyedWord> MOULD_ACTION = List.of(
            new KeyedWord('e', "removed"),
            new KeyedWord('v', "vented"),
            new KeyedWord('i', "isolated"),
            new KeyedWord('q', "left, watched"));
    static final List<KeyedWord> CARE = List.of(
            new KeyedWord('w', CareNote.WATERED),
            new KeyedWord('c', CareNote.CLEANED),
            new KeyedWord('r', CareNote.TURNED),
            new KeyedWord('l', CareNote.LINER_CHANGED));

    static Optional<KeyedWord> ofKey(List<KeyedWord> words, char key) {
        return words.stream().filter(word -> word.key == key).findFirst();
    }
}
