package org.moultwright.ui.climate;

import java.io.UncheckedIOException;
import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.moultwright.domain.Reading;
import org.moultwright.language.Texts;
import org.moultwright.task.Outcome;
import org.moultwright.text.DayWords;
import org.moultwright.workflow.AdvisedException;
import org.moultwright.workflow.LeftBeside;
import org.moultwright.workflow.LinkState;
import org.moultwright.workflow.LogListener;
import org.moultwright.workflow.LogReadings;
import org.moultwright.workflow.ProbeIdentity;
import org.moultwright.workflow.ProbeLine;
import org.moultwright.workflow.ReadingLog;
import org.moultwright.workflow.WatchedLine;

/** The wires this screen listens to, what was heard last on each, and how each is doing. */
final class ProbeWires {
    private final ClimateDesk desk;
    private final Runnable changed;
    private final Map<String, LogReadings> running = new LinkedHashMap<>();
    private boolean closed;
    /** Those the keeper wants to hear no longer; one that ends by itself is watched on, and found silent. */
    private final Set<String> disconnected = ConcurrentHashMap.newKeySet();

    private final Map<String, String> states = new LinkedHashMap<>();

    /** Why readings cannot be kept now, by probe; it matters more than how the wire is doing. */
    private final Map<String, String> unkept = new LinkedHashMap<>();

    private final Map<String, Reading> heard = new LinkedHashMap<>();

    /** @param changed is told on the thread of the screen */
    ProbeWires(ClimateDesk desk, Runnable changed) {
        this.desk = desk;
        this.changed = changed;
    }

    /** Listens to a probe until it is stopped; what comes is kept as it comes. */
    void connect(String probe, ProbeLine line) {
        if (closed) {
            return;
        }
        LogReadings logging =
                new LogReadings(desk.log(), probe, new WatchedLine(desk.watch()::heard, probe, new Ear(probe, line)));
        running.put(probe, logging);
        states.put(probe, Texts.say("connecting to {0}", line.port()));
        desk.lineRunner()
                .get()
                .run(
                        progress -> {
                            desk.watch().begin(probe);
                            logging.run(desk.links(), line, Optional.empty());
                            if (disconnected.remove(probe)) {
                                desk.watch().end(probe);
                                desk.known().forget(probe);
                            }
                            return probe;
                        },
                        outcome -> ended(probe, outcome));
        changed.run();
    }

    /** Listens again to what was listened to when the desk was closed last. */
    void resume() {
        desk.runner().run(progress -> desk.known().all(), outcome -> {
            if (outcome instanceof Outcome.Done<Map<String, ProbeLine>> done) {
                done.value().forEach(this::connect);
            }
        });
    }

    /** Shows what loggers beside the desk hear; it is kept and watched here like what comes over the desk's own wires. */
    void show(LeftBeside beside) {
        beside.latest().forEach((probe, reading) -> {
            heard.put(probe, reading);
            states.put(probe, Texts.say("heard by a logger beside the desk; kept and watched here"));
            beside.waits()
                    .ifPresentOrElse(
                            fault -> unkept.put(
                                    probe,
                                    Texts.say(
                                            "safe beside the store, taken in as soon as it can be: {0} ({1})",
                                            fault.sentence(), fault.code())),
                            () -> unkept.remove(probe));
        });
        changed.run();
    }

    void stop(String probe) {
        Optional.ofNullable(running.get(probe)).ifPresent(logging -> {
            disconnected.add(probe);
            logging.stop();
        });
    }

    /** Asks every link to end; what was heard by then is kept. None is begun any more. */
    void close() {
        closed = true;
        running.values().forEach(LogReadings::stop);
    }

    boolean isRunning(String probe) {
        return running.containsKey(probe);
    }

    Map<String, Reading> heard() {
        return heard;
    }

    Iterable<String> probes() {
        return states.keySet();
    }

    String state(String probe) {
        return Optional.ofNullable(unkept.get(probe)).orElse(states.getOrDefault(probe, ""));
    }

    private void ended(String probe, Outcome<String> outcome) {
        running.remove(probe);
        unkept.remove(probe);
        states.put(
                probe,
                outcome instanceof Outcome.Failed<String> failed
                        ? Texts.say("ended: {0}", failed.fault().getMessage())
                        : Texts.say("disconnected"));
        changed.run();
    }

    private void set(String probe, String state) {
        states.put(probe, state);
        changed.run();
    }

    private String words(LinkState state) {
        if (state instanceof LinkState.Live) {
            return Texts.say("live");
        }
        if (state instanceof LinkState.Silent silent) {
            return Texts.say("no line since {0}", desk.days().clock(silent.lastHeardAt()));
        }
        if (state instanceof LinkState.Lost) {
            return Texts.say("the wire is gone; plug it in again, it is tried again by itself");
        }
        return state instanceof LinkState.Refused refused
                ? refused.sentence() + " (" + refused.code() + ")"
                : Texts.say("connecting");
    }

    /** Carries what the wire's thread tells to the thread of the screen. */
    private final class Ear implements LogListener {
        private final String probe;
        private ProbeLine line;

        Ear(String probe, ProbeLine line) {
            this.probe = probe;
            this.line = line;
        }

        @Override
        public void identified(ProbeIdentity identity) {
            line = new ProbeLine(line.port(), line.profile(), identity);
            remember();
            writeDown(identity);
        }

        /** What cannot be written down now is told anew the next time the probe is connected. */
        private void writeDown(ProbeIdentity identity) {
            try {
                desk.log().identified(probe, identity, desk.clock().instant());
            } catch (AdvisedException fault) {
                desk.screen()
                        .execute(() -> set(
                                probe,
                                Texts.say(
                                        "live; which sensor it is could not be written down: {0} ({1})",
                                        fault.sentence(), fault.code())));
            }
        }

        /** A line that cannot be remembered is listened to all the same. */
        private void remember() {
            try {
                desk.known().remember(probe, line);
            } catch (UncheckedIOException fault) {
                desk.screen()
                        .execute(() -> set(probe, Texts.say("live, but must be connected again at the next start")));
            }
        }

        @Override
        public void heard(ReadingLog.Logged logged) {
            desk.screen().execute(() -> {
                heard.put(probe, logged.reading());
                changed.run();
            });
        }

        @Override
        public void changed(LinkState state) {
            if (state instanceof LinkState.Live) {
                remember();
                if (line.identity().isKnown()) {
                    writeDown(line.identity());
                }
            }
            desk.screen().execute(() -> set(probe, words(state)));
        }

        @Override
        public void clockStepped(Instant seenAt, Duration by) {
            desk.screen()
                    .execute(() ->
                            set(probe, Texts.say("the clock of this machine jumped by {0}", DayWords.age(by.abs()))));
        }

        @Override
        public void notKept(AdvisedException fault) {
            desk.screen().execute(() -> {
                unkept.put(
                        probe, Texts.say("not kept, tried again by itself: {0} ({1})", fault.sentence(), fault.code()));
                changed.run();
            });
        }

        @Override
        public void keptAgain(int waited) {
            desk.screen().execute(() -> {
                unkept.remove(probe);
                set(probe, Texts.say("live; {0} readings waited and are kept now", waited));
            });
        }

        @Override
        public void lost(int readings) {
            desk.screen().execute(() -> set(probe, Texts.say("{0} readings could not be kept and are lost", readings)));
        }
    }
}
