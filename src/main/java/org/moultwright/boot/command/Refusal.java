package org.moultwright.boot.command;

/** The input or the state is at fault: its sentence goes to standard error, and the command ends with 1. */
final class Refusal extends RuntimeException {
    private static final long serialVersionUID = 1L;

    Refusal(String sentence) {
        super(sentence);
    }
}
