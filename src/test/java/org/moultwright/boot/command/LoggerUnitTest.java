package org.moultwright.boot.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/** The service that keeps a logger running. */
class LoggerUnitTest {
    private static final Path UNIT = Path.of("packaging/systemd/moultwright-log@.service");
    private static final String PROGRAM = "%h/moultwright/bin/moultwright";

    @TempDir
    Path folder;

    @Test
    void itsCommandIsOneThatLogUnderstands() throws IOException {
        String command = field("ExecStart");
        assertThat(command).startsWith(PROGRAM + " log ");
        String[] arguments = command.substring((PROGRAM + " log ").length()).split(" ", -1);
        CommandLine.ParseResult parsed = new CommandLine(new LogCommand()).parseArgs(arguments);
        assertThat(parsed.unmatched()).isEmpty();
        assertThat(parsed.matchedOptionValue("--probe", "")).isEqualTo("%i");
    }

    @Test
    void itIsStartedAgainWheneverItEndsAndGivenTimeToSettle() throws IOException {
        assertThat(field("Restart")).isEqualTo("always");
        assertThat(field("StartLimitIntervalSec")).as("however often").isEqualTo("0");
        assertThat(field("KillSignal")).isEqualTo("SIGTERM");
        assertThat(Integer.parseInt(field("TimeoutStopSec"))).isGreaterThan(10);
        assertThat(field("WantedBy")).isEqualTo("default.target");
    }

    @Test
    void theServiceManagerUnderstandsIt() throws IOException, InterruptedException {
        Path unit = folder.resolve("moultwright-log@P-1.service");
        Files.writeString(unit, Files.readString(UNIT).replace(PROGRAM, "/bin/sh"));
        Process check;
        try {
            check = new ProcessBuilder("systemd-analyze", "verify", unit.toString())
                    .redirectErrorStream(true)
                    .start();
        } catch (IOException noSuchCommand) {
            assumeTrue(false, "there is no systemd-analyze");
            return;
        }
        String said = new String(check.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(check.waitFor()).as(said).isZero();
        assertThat(said).doesNotContain("moultwright-log@");
    }

    private static String field(String name) throws IOException {
        List<String> lines = Files.readAllLines(UNIT);
        return lines.stream()
                .filter(line -> line.startsWith(name + "="))
                .findFirst()
                .map(line -> line.substring(name.length() + 1))
                .orElseThrow(() -> new AssertionError(name + " is not in " + Arrays.toString(lines.toArray())));
    }
}
