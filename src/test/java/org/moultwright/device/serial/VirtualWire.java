package org.moultwright.device.serial;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.concurrent.TimeUnit;

/** Two pseudo-terminals joined by socat: what is said at one end is heard at the other. */
public final class VirtualWire implements AutoCloseable {
    private final Path portEnd;
    private final Path probeEnd;
    private final Process socat;
    private final OutputStream probe;

    private VirtualWire(Path portEnd, Path probeEnd, Process socat, OutputStream probe) {
        this.portEnd = portEnd;
        this.probeEnd = probeEnd;
        this.socat = socat;
        this.probe = probe;
    }

    /** Skips the test where there is no socat. */
    public static void assumeAvailable() {
        boolean available = Arrays.stream(System.getenv("PATH").split(File.pathSeparator))
                .anyMatch(folder -> Files.isExecutable(Path.of(folder, "socat")));
        assumeTrue(available, "socat is not installed");
    }

    public static VirtualWire plugIn(Path folder) throws IOException {
        return plugIn(folder, "port");
    }

    static VirtualWire plugIn(Path folder, String name) throws IOException {
        Path portEnd = folder.resolve(name);
        Path probeEnd = folder.resolve("far-end-of-" + name);
        Process socat = new ProcessBuilder("socat", pty(portEnd), pty(probeEnd))
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve(name + ".txt").toFile())
                .start();
        Await.until("both ends are there", () -> Files.exists(portEnd) && Files.exists(probeEnd));
        return new VirtualWire(portEnd, probeEnd, socat, Files.newOutputStream(probeEnd));
    }

    private static String pty(Path link) {
        return "pty,raw,echo=0,link=" + link;
    }

    public String port() {
        return portEnd.toString();
    }

    public void say(String text) throws IOException {
        say(text.getBytes(StandardCharsets.ISO_8859_1));
    }

    public void say(byte[] bytes) throws IOException {
        probe.write(bytes);
        probe.flush();
    }

    /** Waits for a question of so many bytes. */
    byte[] awaitQuestion(int count) throws IOException {
        byte[] question = new byte[count];
        try (InputStream asked = Files.newInputStream(probeEnd)) {
            int have = 0;
            while (have < count) {
                have += asked.read(question, have, count - have);
            }
        }
        return question;
    }

    /** Pulls the wire; both ends vanish. */
    public void pull() throws IOException {
        socat.destroy();
        socat.onExit().orTimeout(10, TimeUnit.SECONDS).join();
        probe.close();
        Files.deleteIfExists(portEnd);
        Files.deleteIfExists(probeEnd);
    }

    @Override
    public void close() throws IOException {
        pull();
    }
}
