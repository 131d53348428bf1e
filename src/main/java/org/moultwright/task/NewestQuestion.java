package org.moultwright.task;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;

/**
 * Asks aside, one question at a time. While one is worked on only the newest of those that follow waits, so
 * answers keep up with a hand that drags. Lives on the thread outcomes are told on.
 *
 * @param <Q> what is asked
 * @param <A> what is answered
 */
public final class NewestQuestion<Q, A> {
    private final Runner runner;
    private final Function<Q, A> work;
    private final Consumer<Outcome<A>> tell;
    private Optional<Q> waiting = Optional.empty();
    private boolean isBusy;
    private boolean isWithdrawn;

    /**
     * @param work finds an answer, on the runner's thread
     * @param tell is told every answer nobody took back, in the order asked
     */
    public NewestQuestion(Runner runner, Function<Q, A> work, Consumer<Outcome<A>> tell) {
        this.runner = runner;
        this.work = work;
        this.tell = tell;
    }

    public void ask(Q question) {
        if (isBusy) {
            waiting = Optional.of(question);
        } else {
            isBusy = true;
            runner.run(progress -> work.apply(question), this::ended);
        }
    }

    /** Takes back all that was asked: none of it is answered any more. */
    public void withdraw() {
        waiting = Optional.empty();
        isWithdrawn = isBusy;
    }

    private void ended(Outcome<A> outcome) {
        boolean isWanted = !isWithdrawn;
        Optional<Q> next = waiting;
        isBusy = false;
        isWithdrawn = false;
        waiting = Optional.empty();
        next.ifPresent(this::ask);
        if (isWanted) {
            tell.accept(outcome);
        }
    }
}
