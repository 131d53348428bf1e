package org.moultwright.domain;

/** Checks on the values a record is built from. A refusal names the field, the value and what is allowed. */
public final class Require {
    private Require() {}

    /** The value itself, if it lies within [lowest, highest]; NaN never does. */
    public static double within(String field, double value, double lowest, double highest) {
        if (value >= lowest && value <= highest) {
            return value;
        }
        throw new IllegalArgumentException(
                "%s is %s but must be within [%s, %s]".formatted(field, value, lowest, highest));
    }

    /** The value itself, if it is at least {@code lowest}. */
    public static int atLeast(String field, int value, int lowest) {
        if (value >= lowest) {
            return value;
        }
        throw new IllegalArgumentException("%s is %d but must be at least %d".formatted(field, value, lowest));
    }

    /** The text itself, if it holds more than white space. */
    public static String text(String field, String value) {
        if (!value.isBlank()) {
            return value;
        }
        throw new IllegalArgumentException(field + " is blank but must hold text");
    }

    /** Nothing, if {@code holds}; otherwise a refusal with this sentence. */
    public static void that(boolean holds, String sentence) {
        if (!holds) {
            throw new IllegalArgumentException(sentence);
        }
    }
}
