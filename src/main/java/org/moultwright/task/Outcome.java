package org.moultwright.task;

/**
 * How work ended.
 *
 * @param <T> what comes of it
 */
public sealed interface Outcome<T> {

    record Done<T>(T value) implements Outcome<T> {}

    record Failed<T>(RuntimeException fault) implements Outcome<T> {}

    record Cancelled<T>() implements Outcome<T> {}
}
