package org.moultwright.ui.round;

import org.moultwright.domain.Stage;

/** What the sheet is waiting for, if it waits for a particular key. */
sealed interface Prompt {

    /** For nothing: keys mean what they mean everywhere on the sheet. */
    record Open() implements Prompt {}

    /** For the stage of a dead animal. */
    record LossStage() implements Prompt {}

    /**
     * For how many and why.
     *
     * @param digits the number as typed so far; none means one
     */
    record LossWhy(Stage stage, String digits) implements Prompt {
        int count() {
            return digits.isEmpty() ? 1 : Math.max(1, Integer.parseInt(digits));
        }
    }

    /** For where mould was found. */
    record MouldWhere() implements Prompt {}

    /** For more about the mould; any other key goes on with the sheet. */
    record MouldMore() implements Prompt {}

    /** For what explains a balance that does not hold. */
    record Explanation() implements Prompt {}

    /**
     * For one key after another, each counting one animal.
     *
     * @param counted how many were counted by now
     * @param ear whether each is heard as well
     */
    record Tally(int counted, TallyEar.State ear) implements Prompt {}
}
