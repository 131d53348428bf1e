package org.moultwright.task;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;

class RunnerTest {
    private final List<Outcome<String>> told = new ArrayList<>();

    @Test
    void inlineWorkIsDoneWhenTheCallReturns() {
        new InlineRunner().run(progress -> "counted", told::add);
        assertThat(told).containsExactly(new Outcome.Done<>("counted"));
    }

    @Test
    void anExceptionArrivesAsAFailure() {
        IllegalStateException fault = new IllegalStateException("the disk is full");
        new InlineRunner()
                .<String>run(
                        progress -> {
                            throw fault;
                        },
                        told::add);
        assertThat(told).containsExactly(new Outcome.Failed<>(fault));
    }

    @Test
    void progressIsSeenInOrder() {
        List<String> seen = new ArrayList<>();
        new InlineRunner()
                .run(
                        progress -> {
                            progress.report(0.5, "half");
                            progress.report(1, "all");
                            return "done";
                        },
                        (fraction, words) -> seen.add(fraction + " " + words),
                        told::add);
        assertThat(seen).containsExactly("0.5 half", "1.0 all");
    }

    @Test
    void workThatWaitsIsCancelled() throws InterruptedException {
        BlockingQueue<Outcome<String>> outcomes = new LinkedBlockingQueue<>();
        CountDownLatch started = new CountDownLatch(1);
        try (BackgroundRunner runner = new BackgroundRunner("test", Runnable::run)) {
            Job job = runner.run(
                    progress -> {
                        started.countDown();
                        new CountDownLatch(1).await();
                        return "never";
                    },
                    outcomes::add);
            started.await();
            job.cancel();
            assertThat(outcomes.poll(10, TimeUnit.SECONDS)).isEqualTo(new Outcome.Cancelled<String>());
        }
    }

    @Test
    void workCancelledBeforeItsTurnNeverStarts() throws InterruptedException {
        BlockingQueue<Outcome<String>> outcomes = new LinkedBlockingQueue<>();
        CountDownLatch held = new CountDownLatch(1);
        try (BackgroundRunner runner = new BackgroundRunner("test", Runnable::run)) {
            runner.run(
                    progress -> {
                        held.await();
                        return "first";
                    },
                    outcomes::add);
            runner.run(progress -> "second", outcomes::add).cancel();
            held.countDown();
            assertThat(outcomes.poll(10, TimeUnit.SECONDS)).isEqualTo(new Outcome.Done<>("first"));
            assertThat(outcomes.poll(10, TimeUnit.SECONDS)).isEqualTo(new Outcome.Cancelled<String>());
        }
    }
}
