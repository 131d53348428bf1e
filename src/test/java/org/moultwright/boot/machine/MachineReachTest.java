package org.moultwright.boot.machine;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.ShortBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.util.WaitForAsyncUtils;

/** Tone and notice of a whole program on a machine with a sound card and a program for notices, and on one without. */
@EnabledOnOs(OS.LINUX)
class MachineReachTest {
    private static final String SHELL_PATH = File.pathSeparator + "/usr/bin" + File.pathSeparator + "/bin";

    @TempDir
    Path folder;

    @Test
    void theToneReachesTheSoundCardAndTheWordsTheProgramForNotices() throws Exception {
        Path told = folder.resolve("told.txt");
        Path bin = Files.createDirectory(folder.resolve("bin"));
        Path program = bin.resolve("notify-send");
        Files.writeString(program, "#!/bin/sh\nprintf '%s\\n' \"$@\" >> '" + told + "'\n");
        Files.setPosixFilePermissions(program, PosixFilePermissions.fromString("rwx------"));
        List<String> said = reachOnce(bin + SHELL_PATH);
        assertThat(said)
                .containsExactly(
                        "Played. If you heard nothing, look at the machine's volume.",
                        "Shown by notify-send. Look whether you see it.");
        WaitForAsyncUtils.waitFor(
                10,
                TimeUnit.SECONDS,
                () -> Files.exists(told) && Files.readAllLines(told).size() == 10);
        assertThat(Files.readAllLines(told))
                .contains("Moultwright: alarm", "--box 1 far too warm, 33.4 °C", "This is only a test.");
        assertTwoNotes(Files.readAllBytes(folder.resolve("played")));
    }

    @Test
    void withoutAProgramForNoticesAndWithoutATrayThatIsSaid() throws Exception {
        List<String> said =
                reachOnce(Files.createDirectory(folder.resolve("empty")).toString());
        assertThat(said.get(1)).startsWith("This desktop shows no notices: there is no notify-send and no tray.");
    }

    /** A D and the A above it, of 587.33 and 880 Hz in equal temperament, and loud enough to be heard. */
    private static void assertTwoNotes(byte[] played) {
        ShortBuffer samples =
                ByteBuffer.wrap(played).order(ByteOrder.LITTLE_ENDIAN).asShortBuffer();
        int half = samples.capacity() / 2;
        assertThat(half / Notes.SAMPLES_PER_SECOND).isBetween(0.5f, 0.6f);
        assertThat(hertz(samples, 0, half)).isBetween(580.0, 590.0);
        assertThat(hertz(samples, half, 2 * half)).isBetween(870.0, 885.0);
        int loudest = 0;
        for (int i = 0; i < samples.capacity(); i++) {
            loudest = Math.max(loudest, Math.abs(samples.get(i)));
        }
        assertThat(loudest).isGreaterThan(Short.MAX_VALUE / 4);
    }

    /** From how often the wave goes up through nought; where it is faintest it may not. */
    private static double hertz(ShortBuffer samples, int from, int to) {
        int rises = 0;
        for (int i = from + 1; i < to; i++) {
            rises += samples.get(i - 1) < 0 && samples.get(i) >= 0 ? 1 : 0;
        }
        return rises * Notes.SAMPLES_PER_SECOND / (double) (to - from);
    }

    private List<String> reachOnce(String path) throws IOException, InterruptedException {
        Path services = Files.createDirectories(folder.resolve("classes/META-INF/services"));
        Files.writeString(
                services.resolve("javax.sound.sampled.spi.MixerProvider"), RecordedSound.class.getName() + "\n");
        ProcessBuilder builder = new ProcessBuilder(
                ProcessHandle.current().info().command().orElse("java"),
                "-Djava.awt.headless=true",
                "-XX:TieredStopAtLevel=1",
                "-cp",
                folder.resolve("classes") + File.pathSeparator + System.getProperty("java.class.path"),
                ReachOnce.class.getName(),
                folder.resolve("played").toString());
        builder.environment().put("PATH", path);
        Process child = builder.redirectError(ProcessBuilder.Redirect.INHERIT).start();
        List<String> said = new String(child.getInputStream().readAllBytes(), StandardCharsets.UTF_8)
                .lines()
                .toList();
        assertThat(child.waitFor()).isZero();
        return said;
    }
}
