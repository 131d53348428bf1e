package org.moultwright.boot.command;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import org.moultwright.boot.machine.AlarmCommand;
import org.moultwright.boot.machine.SerialLines;
import org.moultwright.device.link.LinkClock;
import org.moultwright.settings.Settings;
import org.moultwright.settings.SettingsFile;
import org.moultwright.store.H2Store;
import org.moultwright.store.LoggingStore;
import org.moultwright.task.Ticker;
import org.moultwright.workflow.AdvisedException;
import org.moultwright.workflow.CalibratedBook;
import org.moultwright.workflow.KeepWatch;
import org.moultwright.workflow.LinkState;
import org.moultwright.workflow.LogListener;
import org.moultwright.workflow.LogReadings;
import org.moultwright.workflow.ProbeIdentity;
import org.moultwright.workflow.ProbeLine;
import org.moultwright.workflow.ProbeLinks;
import org.moultwright.workflow.ReadingLog;
import org.moultwright.workflow.WatchPlaces;
import org.moultwright.workflow.WatchedLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code log}: keeps what a probe says, without a window, through every fault of the wire. */
@Command(
        name = "log",
        description =
                "Keeps what a probe says. Prints a line for each reading once it is on disk; goes on through faults.")
final class LogCommand implements Runnable {
    private static final long SECONDS_TO_SETTLE = 10;

    @Option(
            names = "--store",
            required = true,
            paramLabel = "FILE",
            description = "the store; it is made if it is not there")
    Path store = Path.of("");

    @Option(names = "--port", required = true, paramLabel = "PATH", description = "the serial port")
    String port = "";

    @Option(
            names = "--profile",
            required = true,
            paramLabel = "NAME",
            description = "the form of its lines, such as plain-number")
    String profile = "";

    @Option(names = "--probe", paramLabel = "CODE", description = "the probe's code (default: ${DEFAULT-VALUE})")
    String probe = "P-1";

    @Option(
            names = "--for",
            paramLabel = "DURATION",
            description = "how long, such as PT10M, 10m or 30s (default: until told to stop)")
    Optional<Duration> lasting = Optional.empty();

    @Option(
            names = "--on-alarm",
            paramLabel = "CMD",
            description = "a command to run when an alarm begins, comes again or is seen by nobody; what happened is in"
                    + " its environment as MOULTWRIGHT_WORDS, _CONTAINER, _ALARM, _TURN and _AT (default: that of the"
                    + " settings, if any)")
    Optional<String> onAlarm = Optional.empty();

    @Mixin
    Answer answer = new Answer();

    private final LinkClock clock;
    private final Supplier<ProbeLinks> links;

    LogCommand() {
        this(LinkClock.SYSTEM, () -> SerialLines.usual().links());
    }

    /**
     * @param clock what readings beside the store, alarms and the names of sensors go by
     * @param links the wires, asked for once
     */
    LogCommand(LinkClock clock, Supplier<ProbeLinks> links) {
        this.clock = clock;
        this.links = links;
    }

    @Override
    public void run() {
        CountDownLatch allOnDisk = new CountDownLatch(1);
        Settings settings = SettingsFile.atHome().load().settings();
        LogWatch watch = new LogWatch(probe, open -> watch(open, settings), this::tell);
        try (LoggingStore shared = new LoggingStore(store, clock.wall(), watch)) {
            LogReadings log = new LogReadings(
                    shared, probe, new WatchedLine(watch::heard, probe, new Acknowledgement(this, shared)));
            Runtime.getRuntime().addShutdownHook(new Thread(() -> stop(log, allOnDisk), "stop logging"));
            Ticker turns = new Ticker("store", LoggingStore.USUAL_TICK, () -> turn(shared));
            Ticker ticker = new Ticker("watch", KeepWatch.USUAL_TICK, watch::tick);
            try {
                log.run(links.get(), new ProbeLine(port, profile), lasting);
            } finally {
                turns.close();
                ticker.close();
            }
        } finally {
            allOnDisk.countDown();
        }
    }

    /** A turn that fails must not be the last one. */
    private void turn(LoggingStore shared) {
        try {
            shared.tick();
        } catch (AdvisedException fault) {
            tell(fault.sentence() + " [" + fault.code() + "]");
        }
    }

    private void tell(String sentence) {
        answer.err().println(sentence);
        answer.err().flush();
    }

    /** Nobody else can write into the store while it is open here, so that what is written of places is read once. */
    private KeepWatch watch(H2Store open, Settings settings) {
        String command = onAlarm.orElse(settings.alarms().command());
        return new KeepWatch(
                open.alarms(),
                open.readings(),
                clock.wall(),
                clock.steadyNanos(),
                UUID::randomUUID,
                WatchPlaces.of(new CalibratedBook(open.book(), open.climate()))
                        .withWalls(settings.watchedWalls(), open.climate().calibrations()),
                settings.alarms().limits(),
                new AlarmLines(
                        answer.err(),
                        Optional.of(command).filter(words -> !words.isBlank()).map(AlarmCommand::new)));
    }

    /** A signal ends the program once this returns, so it waits until all that was heard is on disk. */
    private static void stop(LogReadings log, CountDownLatch allOnDisk) {
        log.stop();
        try {
            allOnDisk.await(SECONDS_TO_SETTLE, TimeUnit.SECONDS);
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
    }

    /** Tells of each reading that is on disk, and on standard error how the wire is doing. */
    private record Acknowledgement(LogCommand command, LoggingStore shared) implements LogListener {
        @Override
        public void heard(ReadingLog.Logged logged) {
            Answer answer = command.answer;
            if (answer.json) {
                answer.document(ReadingJson.of(logged));
            } else {
                answer.out().println(ReadingCsv.line(logged.reading()));
                answer.out().flush();
            }
        }

        /** What cannot be written down now is told anew at the next start, before the first reading. */
        @Override
        public void identified(ProbeIdentity identity) {
            tell("The probe is " + identity.words() + ".");
            try {
                shared.identified(command.probe, identity, command.clock.wall().instant());
            } catch (AdvisedException fault) {
                tell(fault.sentence() + " [" + fault.code() + "]");
            }
        }

        @Override
        public void changed(LinkState state) {
            tell(words(state));
        }

        @Override
        public void clockStepped(Instant seenAt, Duration by) {
            tell("The clock was set or the machine slept: it jumped by %s, to %s.".formatted(by, seenAt)
                    + (by.isNegative() ? " A reading whose instant is taken is kept a millisecond later." : ""));
        }

        @Override
        public void notKept(AdvisedException fault) {
            tell("%s Readings wait and are tried again every %d s; none is printed before it is kept. [%s]"
                    .formatted(fault.sentence(), LogReadings.USUAL_PAUSE.toSeconds(), fault.code()));
        }

        @Override
        public void keptAgain(int waited) {
            tell("Readings are kept again; %d waited.".formatted(waited));
        }

        @Override
        public void lost(int readings) {
            tell("%d readings that were never printed are lost.".formatted(readings));
        }

        private void tell(String sentence) {
            command.tell(sentence);
        }

        private static String words(LinkState state) {
            if (state instanceof LinkState.Refused refused) {
                return refused.sentence() + " [" + refused.code() + "]";
            }
            if (state instanceof LinkState.Silent silent) {
                return "The probe is silent since " + silent.lastHeardAt() + ". Check the plug.";
            }
            if (state instanceof LinkState.Lost) {
                return "The wire is gone. It is tried again.";
            }
            return state instanceof LinkState.Live ? "Lines come." : "Connecting.";
        }
    }
}
