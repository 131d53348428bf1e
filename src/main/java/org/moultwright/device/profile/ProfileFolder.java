package org.moultwright.device.profile;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.moultwright.file.WholeFile;
import org.moultwright.language.Texts;
import org.moultwright.workflow.ProfileProblem;

/**
 * Profiles the keeper wrote: the files {@code *.profile} of a folder, each checked. One with a code that is taken
 * is not usable, so that none stands in for another unnoticed. A file that cannot be read is one with a problem.
 */
final class ProfileFolder {
    private static final String ENDING = ".profile";
    private static final long LARGEST_BYTES = 64 * 1024;

    private final Path folder;
    private final Set<String> taken;

    /** @param taken codes that may not be used again */
    ProfileFolder(Path folder, Set<String> taken) {
        this.folder = folder;
        this.taken = new HashSet<>(taken);
    }

    /**
     * A file of the folder.
     *
     * @param name of the file
     * @param check what it declares and all that is wrong with it
     */
    record Found(String name, ProfileCheck check) {}

    /** What is in the folder, in order of names; nothing if there is no such folder. */
    List<Found> read() {
        if (Files.notExists(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            List<Found> found = new ArrayList<>();
            files.filter(file -> file.getFileName().toString().endsWith(ENDING))
                    .sorted()
                    .forEach(file -> found.add(new Found(file.getFileName().toString(), onlyOne(check(file)))));
            return found;
        } catch (IOException e) {
            return List.of(new Found(
                    folder.getFileName().toString(), unreadable(Texts.say("The folder {0} cannot be read.", folder))));
        }
    }

    /** The text of a file of the folder. */
    List<String> text(String name) {
        try {
            return Files.readAllLines(folder.resolve(name));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The name of the file for a code nobody has yet. */
    static String nameFor(String code) {
        return code + ENDING;
    }

    /** Writes a file of the folder, whole or not at all. */
    void write(String name, List<String> text) {
        try {
            WholeFile.write(folder.resolve(name), text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private ProfileCheck onlyOne(ProfileCheck check) {
        ProfileCheck only = check.withCodeNotIn(taken);
        check.code().ifPresent(taken::add);
        return only;
    }

    private static ProfileCheck check(Path file) {
        try {
            return Files.size(file) > LARGEST_BYTES
                    ? unreadable(Texts.say("the file is larger than {0} bytes; a profile is not", LARGEST_BYTES))
                    : ProfileCheck.of(new String(Files.readAllBytes(file), StandardCharsets.UTF_8)
                            .lines()
                            .toList());
        } catch (IOException e) {
            return unreadable(Texts.say("the file cannot be read; see who may read it"));
        }
    }

    private static ProfileCheck unreadable(String sentence) {
        return new ProfileCheck(Optional.empty(), Optional.empty(), "", List.of(new ProfileProblem(0, sentence)));
    }
}
