package org.moultwright.domain.code;

import java.util.Optional;

/** What a scanned or typed text says: a pot code, or the reason why it is none. */
public sealed interface PotCodeReading {

    /** What counts of the code, if the text is one. */
    Optional<String> symbols();

    /**
     * The text is a pot code and its check character is right.
     *
     * @param text its symbols, as {@link PotCode#symbols()} gives them
     */
    record Understood(String text) implements PotCodeReading {
        @Override
        public Optional<String> symbols() {
            return Optional.of(text);
        }
    }

    /**
     * The text is not a pot code.
     *
     * @param reason what is wrong
     * @param sentence the same in words for the keeper
     */
    record Refused(Reason reason, String sentence) implements PotCodeReading {
        @Override
        public Optional<String> symbols() {
            return Optional.empty();
        }
    }

    /** What can be wrong with a code. */
    enum Reason {
        UNKNOWN_SYMBOL,
        TOO_SHORT,
        OTHER_FORM,
        WRONG_CHECK_CHARACTER
    }
}
