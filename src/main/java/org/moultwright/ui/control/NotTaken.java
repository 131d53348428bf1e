package org.moultwright.ui.control;

/**
 * What a field did not take last, and what came of it.
 *
 * @param sentence what may stand in the field; empty where all was taken
 * @param isOneSign whether it was a single sign just now, as when somebody types
 * @param isUnread whether nothing was held since, so that nobody need have read it
 * @param isDoubtful whether something was written on after it
 */
record NotTaken(String sentence, boolean isOneSign, boolean isUnread, boolean isDoubtful) {
    static final NotTaken NOTHING = new NotTaken("", false, false, false);

    /** One more thing was not taken. */
    NotTaken and(String refusal, boolean ofOneSign) {
        return new NotTaken(refusal, ofOneSign, true, isDoubtful);
    }

    /** Something was written on. */
    NotTaken goneOn() {
        return new NotTaken(sentence, false, isUnread, !sentence.isEmpty());
    }

    NotTaken read() {
        return new NotTaken(sentence, isOneSign, false, isDoubtful);
    }
}
