package org.moultwright.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** Starts a main class of the tests in a Java machine of its own, quick to start. */
public final class ChildJvm {
    private ChildJvm() {}

    public static Process start(Class<?> main, String... arguments) throws IOException {
        List<String> command = new ArrayList<>(List.of(
                ProcessHandle.current().info().command().orElse("java"),
                "-Xshare:auto",
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty("java.class.path"),
                main.getName()));
        command.addAll(List.of(arguments));
        return new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
    }

    /**
     * Starts it and kills it some time after its first line.
     *
     * @return the lines it said that were whole: those that end in a full stop
     */
    public static List<String> saidUntilKilled(Class<?> main, int millisAfterFirst, String... arguments)
            throws IOException, InterruptedException {
        Process writer = start(main, arguments);
        List<String> acknowledged = new ArrayList<>();
        try (BufferedReader said =
                new BufferedReader(new InputStreamReader(writer.getInputStream(), StandardCharsets.UTF_8))) {
            acknowledged.add(said.readLine());
            boolean endedByItself = writer.waitFor(millisAfterFirst, TimeUnit.MILLISECONDS);
            // The process itself would close the stream with what it still holds.
            writer.toHandle().destroyForcibly();
            assertThat(endedByItself).as("%s ended before it was killed", main).isFalse();
            said.lines().filter(line -> line.endsWith(".")).forEach(acknowledged::add);
            writer.waitFor();
        } finally {
            writer.destroyForcibly();
        }
        return acknowledged;
    }
}
