package org.moultwright.boot.machine;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.security.CodeSource;
import java.util.Optional;

/** Which build of the program runs, told by the file it is in. */
public final class ProgramBuild {
    private ProgramBuild() {}

    /** Another for each build; empty where the program is no file but a folder of classes, which change one by one. */
    public static Optional<String> stamp() {
        return Optional.ofNullable(ProgramBuild.class.getProtectionDomain().getCodeSource())
                .flatMap(ProgramBuild::stamp);
    }

    private static Optional<String> stamp(CodeSource source) {
        try {
            BasicFileAttributes file =
                    Files.readAttributes(Path.of(source.getLocation().toURI()), BasicFileAttributes.class);
            return file.isRegularFile() ? Optional.of(file.size() + " " + file.lastModifiedTime()) : Optional.empty();
        } catch (IOException | URISyntaxException unknown) {
            return Optional.empty();
        }
    }
}
