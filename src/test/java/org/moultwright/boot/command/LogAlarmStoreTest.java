package org.moultwright.boot.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.moultwright.boot.machine.SerialLines;
import org.moultwright.device.link.LinkClock;
import org.moultwright.device.serial.VirtualWire;
import org.moultwright.domain.AlarmEntry;
import org.moultwright.domain.AlarmKind;
import org.moultwright.domain.AlarmTurn;
import org.moultwright.store.H2Store;
import picocli.CommandLine;

/** A whole run of the logger over a pseudo-terminal, by a steady clock that runs fast. */
class LogAlarmStoreTest {
    /** Alarms wait a minute at least; so fast that is over in less than a second. */
    private static final int TIMES_FASTER = 100;

    private static final LinkClock FAST = new LinkClock(InstantSource.system(), () -> System.nanoTime() * TIMES_FASTER);

    private static final long NANOS_APART = 150_000_000;

    @TempDir
    Path folder;

    @Test
    void aHotProbeIsToldOnStandardErrorWrittenDownAndTheCommandRun() throws Exception {
        VirtualWire.assumeAvailable();
        Path store = folder.resolve("room.store");
        Path called = folder.resolve("called");
        StringWriter err = new StringWriter();
        try (VirtualWire wire = VirtualWire.plugIn(folder)) {
            CommandLine line = new CommandLine(
                            new LogCommand(FAST, () -> SerialLines.usual().links()))
                    .setOut(new PrintWriter(new StringWriter()))
                    .setErr(new PrintWriter(err));
            CompletableFuture<Integer> run = CompletableFuture.supplyAsync(() -> line.execute(
                    "--store",
                    store.toString(),
                    "--port",
                    wire.port(),
                    "--profile",
                    "plain-number",
                    "--for",
                    "PT8S",
                    "--on-alarm",
                    "printf %s \"$MOULTWRIGHT_WORDS\" >> '" + called + "'"));
            speak(wire, run);
            assertThat(run.get(30, TimeUnit.SECONDS)).isZero();
        }
        assertThat(err.toString()).containsPattern("ALARM \\S+ P-1 far too warm, 3[23]\\.\\d °C");
        assertThat(Files.readString(called)).contains("P-1 far too warm");
        try (H2Store open = H2Store.open(store)) {
            assertThat(open.alarms().of("P-1"))
                    .filteredOn(entry -> entry.kind() == AlarmKind.VERY_HIGH)
                    .extracting(AlarmEntry::turn)
                    .startsWith(AlarmTurn.RAISED);
        }
    }

    /** Lines come with pauses, as from a probe, until the run is over. */
    private static void speak(VirtualWire wire, CompletableFuture<Integer> run) throws IOException {
        for (int number = 0; !run.isDone(); number++) {
            wire.say("32." + number % 10 + "\n");
            LockSupport.parkNanos(NANOS_APART);
        }
    }
}
