package org.moultwright.boot;

import static org.assertj.core.api.Assertions.fail;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.locks.LockSupport;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

/** A main class in a Java machine of its own: what it says is gathered, and waited for. */
final class ChildProgram {
    private static final long SECONDS_TO_WAIT = 40;

    private final List<String> command = new ArrayList<>();
    private final List<String> out = new CopyOnWriteArrayList<>();
    private final List<String> err = new CopyOnWriteArrayList<>();
    private final Consumer<String> outListener;
    private final Process process;

    /**
     * Starts it.
     *
     * @param home its user's home
     * @param options more of the Java machine's
     * @param outListener is told of every line on standard output
     */
    ChildProgram(Path home, List<String> options, Consumer<String> outListener, String... program) {
        this.outListener = outListener;
        command.addAll(List.of(
                ProcessHandle.current().info().command().orElse("java"),
                "-XX:TieredStopAtLevel=1",
                "-Duser.home=" + home,
                "-cp",
                System.getProperty("java.class.path")));
        command.addAll(options);
        command.addAll(List.of(program));
        try {
            process = new ProcessBuilder(command).start();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        read(process.getInputStream(), this::said);
        read(process.getErrorStream(), err::add);
    }

    List<String> out() {
        return out;
    }

    List<String> err() {
        return err;
    }

    long pid() {
        return process.pid();
    }

    /** How many lines of standard error begin so. */
    long told(String beginning) {
        return err.stream().filter(line -> line.startsWith(beginning)).count();
    }

    void tell(String line) {
        try {
            OutputStream in = process.getOutputStream();
            in.write((line + "\n").getBytes(StandardCharsets.UTF_8));
            in.flush();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    void await(String what, BooleanSupplier holds) {
        long beganAtNanos = System.nanoTime();
        while (!holds.getAsBoolean()) {
            if (System.nanoTime() - beganAtNanos > SECONDS_TO_WAIT * 1_000_000_000L) {
                fail("waited %d s until %s; %s", SECONDS_TO_WAIT, what, this);
            }
            LockSupport.parkNanos(2_000_000);
        }
    }

    void kill() {
        process.toHandle().destroyForcibly();
        process.onExit().join();
    }

    /** Asks it to end, and waits. */
    int end() throws InterruptedException {
        process.destroy();
        return process.waitFor();
    }

    private void said(String line) {
        out.add(line);
        outListener.accept(line);
    }

    private static void read(InputStream from, Consumer<String> action) {
        Thread reader = new Thread(() -> {
            try (BufferedReader lines = new BufferedReader(new InputStreamReader(from, StandardCharsets.UTF_8))) {
                for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                    action.accept(line);
                }
            } catch (IOException killed) {
                // What it said until then was read.
            }
        });
        reader.setDaemon(true);
        reader.start();
    }

    @Override
    public String toString() {
        return command.get(5) + " said " + out.subList(Math.max(0, out.size() - 3), out.size()) + ", told "
                + err.subList(Math.max(0, err.size() - 12), err.size());
    }
}
