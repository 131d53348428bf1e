package org.moultwright.workflow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowable;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.moultwright.domain.Quality;
import org.moultwright.domain.Reading;
import org.moultwright.domain.ReadingSeries;
import org.moultwright.store.StoreException;
import org.moultwright.workflow.ReadingLog.Logged;

class LogReadingsTest {
    private static final Instant START = Instant.parse("2026-03-01T20:00:00Z");
    private static final ProbeLine LINE = new ProbeLine("port", "plain-number");

    private final List<String> story = new ArrayList<>();
    private final LogReadings logging = new LogReadings(new ToldLog(), "P1", new Telling());

    @Test
    void aReadingIsToldOnlyOnceItIsOnDisk() {
        run(listener -> {
            listener.changed(new LinkState.Live());
            listener.heard(reading(1));
            listener.clockStepped(START, Duration.ofHours(1));
            listener.heard(reading(2));
            logging.stop();
        });
        assertThat(story)
                .containsExactly("disk P1 [r1, r2]", "Live", "told r1", "stepped PT1H", "told r2", "link closed");
    }

    @Test
    void itGoesOnThroughFaultsOfTheWire() {
        run(listener -> {
            listener.changed(new LinkState.Lost());
            listener.changed(new LinkState.Refused("DE-3", "There is no port."));
            listener.heard(reading(1));
            logging.stop();
        });
        assertThat(story).containsExactly("disk P1 [r1]", "Lost", "Refused", "told r1", "link closed");
    }

    @Test
    void itEndsWhenTheTimeIsOver() {
        logging.run(new StartedLinks(listener -> listener.heard(reading(1))), LINE, Optional.of(Duration.ofMillis(50)));
        assertThat(story).containsExactly("disk P1 [r1]", "told r1", "link closed");
    }

    @Test
    void whatComesWhileTheLinkClosesIsKeptToo() {
        ProbeLinks links = new ProbeLinks() {
            @Override
            public List<String> profiles() {
                return List.of();
            }

            @Override
            public Link open(ProbeLine line, ProbeListener listener) {
                return () -> listener.heard(reading(9));
            }
        };
        logging.run(links, LINE, Optional.of(Duration.ZERO));
        assertThat(story).containsExactly("disk P1 [r9]", "told r9");
    }

    @Test
    void anInterruptEndsItAndIsPassedOn() {
        Thread.currentThread().interrupt();
        run(listener -> listener.heard(reading(1)));
        assertThat(Thread.interrupted()).isTrue();
        assertThat(story).containsExactly("link closed", "disk P1 [r1]", "told r1");
    }

    @Test
    void aFaultOfTheDiskEndsItWithTheLinkClosedAndNothingTold() {
        LogReadings failing = new LogReadings(
                new ToldLog() {
                    @Override
                    public List<Logged> append(String probe, List<Logged> readings) {
                        throw new IllegalStateException("disk full");
                    }
                },
                "P1",
                new Telling());
        StartedLinks links = new StartedLinks(listener -> listener.heard(reading(1)));
        assertThat(catchThrowable(() -> failing.run(links, LINE, Optional.empty())))
                .hasMessage("disk full");
        assertThat(story).containsExactly("link closed");
    }

    @Test
    void whileItCannotBeKeptReadingsWaitAndTheRestIsTold() {
        FullLog full = new FullLog(3);
        LogReadings patient = new LogReadings(full, "P1", new Telling(), Duration.ofMillis(1));
        full.whenThereIsRoom = patient::stop;
        patient.run(
                new StartedLinks(listener -> {
                    listener.heard(reading(1));
                    listener.changed(new LinkState.Live());
                    listener.heard(reading(2));
                }),
                LINE,
                Optional.empty());
        assertThat(story)
                .containsExactly(
                        "not kept ST-6",
                        "Live",
                        "disk P1 [r1, r2]",
                        "kept again 2",
                        "told r1",
                        "told r2",
                        "link closed");
    }

    @Test
    void whatCannotBeKeptToTheEndIsSaidToBeLost() {
        LogReadings failing =
                new LogReadings(new FullLog(Integer.MAX_VALUE), "P1", new Telling(), Duration.ofMillis(1));
        StartedLinks links = new StartedLinks(listener -> listener.heard(reading(1)));
        assertThatThrownBy(() -> failing.run(links, LINE, Optional.of(Duration.ofMillis(30))))
                .isInstanceOf(StoreException.class);
        assertThat(story).containsExactly("not kept ST-6", "link closed", "lost 1");
    }

    @Test
    void theOldestAreGivenUpAndCountedWhereTooManyWait() {
        int most = 86_400;
        FullLog full = new FullLog(1);
        LogReadings patient = new LogReadings(full, "P1", new Telling(), Duration.ofMillis(1));
        full.whenThereIsRoom = patient::stop;
        patient.run(
                new StartedLinks(listener -> {
                    for (int number = 1; number <= most + 3; number++) {
                        listener.heard(reading(number));
                    }
                }),
                LINE,
                Optional.empty());
        assertThat(story.subList(2, 5)).containsExactly("kept again " + most, "lost 3", "told r4");
    }

    @Test
    void aReadingIsToldAsItIsKept() {
        LogReadings moving = new LogReadings(
                new ToldLog() {
                    @Override
                    public List<Logged> append(String probe, List<Logged> readings) {
                        return readings.stream().map(logged -> reading(7)).toList();
                    }
                },
                "P1",
                new Telling());
        moving.run(new StartedLinks(listener -> listener.heard(reading(1))), LINE, Optional.of(Duration.ofMillis(1)));
        assertThat(story).contains("told r7");
    }

    @Test
    void aProbeNeedsACode() {
        assertThatThrownBy(() -> new LogReadings(new ToldLog(), " ", new Telling()))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private void run(Consumer<ProbeListener> deeds) {
        logging.run(new StartedLinks(deeds), LINE, Optional.empty());
    }

    private static Logged reading(int number) {
        Reading reading = new Reading(START.plusSeconds(number), 26.0, Double.NaN, Quality.GOOD);
        return new Logged(reading, "r" + number);
    }

    /** A link whose deeds are done when it is opened. */
    private final class StartedLinks implements ProbeLinks {
        private final Consumer<ProbeListener> deeds;

        StartedLinks(Consumer<ProbeListener> deeds) {
            this.deeds = deeds;
        }

        @Override
        public List<String> profiles() {
            return List.of();
        }

        @Override
        public Link open(ProbeLine line, ProbeListener listener) {
            deeds.accept(listener);
            return () -> story.add("link closed");
        }
    }

    private class ToldLog implements ReadingLog {
        @Override
        public List<Logged> append(String probe, List<Logged> readings) {
            story.add("disk " + probe + " "
                    + readings.stream().map(Logged::rawLine).toList());
            return readings;
        }

        @Override
        public ReadingSeries series(String probe, Instant from, Instant to) {
            return ReadingSeries.EMPTY;
        }

        @Override
        public Map<String, Reading> latest() {
            return Map.of();
        }
    }

    /** A log on a disk that is full for some attempts. */
    private final class FullLog extends ToldLog {
        private int attemptsLeft;
        private Runnable whenThereIsRoom = () -> {};

        FullLog(int attempts) {
            this.attemptsLeft = attempts;
        }

        @Override
        public List<Logged> append(String probe, List<Logged> readings) {
            if (attemptsLeft-- > 0) {
                throw new StoreException(StoreException.Reason.DISK_FULL, "The disk is full.");
            }
            whenThereIsRoom.run();
            return super.append(probe, readings);
        }
    }

    private final class Telling implements LogListener {
        @Override
        public void heard(Logged logged) {
            story.add("told " + logged.rawLine());
        }

        @Override
        public void changed(LinkState state) {
            story.add(state.getClass().getSimpleName());
        }

        @Override
        public void clockStepped(Instant seenAt, Duration by) {
            story.add("stepped " + by);
        }

        @Override
        public void notKept(AdvisedException fault) {
            story.add("not kept " + fault.code());
        }

        @Override
        public void keptAgain(int waited) {
            story.add("kept again " + waited);
        }

        @Override
        public void lost(int readings) {
            story.add("lost " + readings);
        }
    }
}
