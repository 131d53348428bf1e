package org.moultwright.workflow;

import java.util.OptionalInt;

/**
 * The balance of one tray's sheet: expected = counted + taken + unexplained.
 *
 * @param expected animals in the tray by the ledger, before the sheet
 * @param counted animals counted, empty where the tray was only partly looked at
 * @param taken animals taken out dead or infertile
 */
public record Balance(int expected, OptionalInt counted, int taken) {

    /** Animals missing from the count; negative where more were found than expected; 0 where none were counted. */
    public int unexplained() {
        return counted.isPresent() ? expected - counted.getAsInt() - taken : 0;
    }

    public boolean holds() {
        return unexplained() == 0;
    }

    /** Whether more are said to be taken out than the tray can hold. */
    public boolean takesTooMany() {
        return taken > expected && counted.isEmpty();
    }

    /** What the keeper can say of animals the balance does not explain. */
    public enum Answer {
        /** The ledger was wrong before tonight: there were more, or fewer, all along. */
        EARLIER_MISCOUNT,
        /** They were there and are not any more: eaten or lost. Only where animals are missing. */
        GONE
    }
}
