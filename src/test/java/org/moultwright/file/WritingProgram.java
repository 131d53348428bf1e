package org.moultwright.file;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Writes a file and says what came of it: a program of its own, because an administrator may write anywhere, and only
 * a new program can be begun without that power.
 */
final class WritingProgram {
    private WritingProgram() {}

    public static void main(String[] arguments) throws IOException {
        try {
            WholeFile.write(Path.of(arguments[0]), arguments[1].getBytes(StandardCharsets.UTF_8));
            System.out.print("written");
        } catch (FileSystemException refused) {
            System.out.print(refused.getClass().getSimpleName());
        }
    }

    /** Runs it with the rights of an ordinary user. */
    static String run(Path file, String content) throws IOException {
        List<String> command = new ArrayList<>();
        if (System.getProperty("user.name").equals("root")) {
            command.addAll(List.of("setpriv", "--inh-caps=-all", "--bounding-set=-all"));
        }
        command.addAll(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                WritingProgram.class.getName(),
                file.toString(),
                content));
        Process program = new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        return new String(program.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    }
}
