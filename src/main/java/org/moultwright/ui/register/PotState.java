package org.moultwright.ui.register;

import org.moultwright.domain.PotEvent.What;
import org.moultwright.domain.PotLife;
import org.moultwright.language.Texts;

/** How the animal of a pot is. */
enum PotState {
    ALIVE(Texts.say("alive")),
    DEAD(Texts.say("dead")),
    HANDED_OVER(Texts.say("handed over"));

    private final String word;

    PotState(String word) {
        this.word = word;
    }

    String word() {
        return word;
    }

    static PotState of(PotLife life) {
        return life.end()
                .map(end -> end.what() == What.DIED ? DEAD : HANDED_OVER)
                .orElse(ALIVE);
    }
}
