package org.moultwright.task;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;

class NewestQuestionTest {
    private final Deque<Runnable> asked = new ArrayDeque<>();
    private final List<String> told = new ArrayList<>();
    private final NewestQuestion<Integer, String> questions =
            new NewestQuestion<>(new Waiting(), number -> "answer " + number, this::tell);

    @Test
    void whileOneIsWorkedOnOnlyTheNewestWaits() {
        questions.ask(1);
        questions.ask(2);
        questions.ask(3);
        assertThat(asked).hasSize(1);
        finishAll();
        assertThat(told).containsExactly("answer 1", "answer 3");
    }

    @Test
    void whatWasTakenBackIsNeverTold() {
        questions.ask(1);
        questions.ask(2);
        questions.withdraw();
        finishAll();
        assertThat(told).isEmpty();
    }

    @Test
    void aQuestionAfterThatIsAnswered() {
        questions.ask(1);
        questions.withdraw();
        questions.ask(2);
        finishAll();
        assertThat(told).containsExactly("answer 2");
    }

    @Test
    void takingBackWhatWasAnsweredSpoilsNothing() {
        questions.ask(1);
        finishAll();
        questions.withdraw();
        questions.ask(2);
        finishAll();
        assertThat(told).containsExactly("answer 1", "answer 2");
    }

    private void finishAll() {
        while (!asked.isEmpty()) {
            asked.remove().run();
        }
    }

    private void tell(Outcome<String> outcome) {
        if (outcome instanceof Outcome.Done<String> done) {
            told.add(done.value());
        }
    }

    /** Works only when told to. */
    private final class Waiting implements Runner {
        @Override
        public <T> Job run(Work<T> work, Watcher watcher, Consumer<Outcome<T>> whenEnded) {
            asked.add(() -> new InlineRunner().run(work, watcher, whenEnded));
            return () -> {};
        }
    }
}
