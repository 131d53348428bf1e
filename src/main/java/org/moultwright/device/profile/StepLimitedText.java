package org.moultwright.device.profile;

/**
 * Text that lets itself be looked at so many times and no more, so that no pattern can run away on it: a
 * search that goes back and forth looks at characters each time.
 */
final class StepLimitedText implements CharSequence {
    private final String text;
    private int stepsLeft;

    StepLimitedText(String text, int steps) {
        this.text = text;
        this.stepsLeft = steps;
    }

    @Override
    public char charAt(int index) {
        if (stepsLeft-- <= 0) {
            throw new OutOfStepsException();
        }
        return text.charAt(index);
    }

    @Override
    public int length() {
        return text.length();
    }

    @Override
    public CharSequence subSequence(int start, int end) {
        return text.substring(start, end);
    }

    @Override
    public String toString() {
        return text;
    }

    /** The search took more steps than it may. */
    static final class OutOfStepsException extends RuntimeException {
        private static final long serialVersionUID = 1L;

        OutOfStepsException() {
            super("the pattern takes too many steps on this line", null, false, false);
        }
    }
}
