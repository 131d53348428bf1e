package org.moultwright.ui.broods;

import java.util.List;

/** Something that does not add up, and what it may be. */
record OpeningQuestion(String sentence, List<Answer> answers) {
    OpeningQuestion {
        answers = List.copyOf(answers);
    }

    /**
     * @param key the key that gives it
     * @param words what it says
     */
    record Answer(String key, String words, Runnable give) {}
}
