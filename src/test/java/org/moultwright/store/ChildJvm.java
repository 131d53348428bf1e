package org.moultwright.store;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

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
}
