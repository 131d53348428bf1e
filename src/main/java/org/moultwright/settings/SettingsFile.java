package org.moultwright.settings;

import dev.dirs.ProjectDirectories;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.moultwright.file.WholeFile;

/**
 * The file settings are kept in.
 *
 * <p>A file that is not understood is never overwritten: it is moved aside, under a name that was free, and
 * the defaults hold. Saving leaves the file whole, or as it was.
 */
public final class SettingsFile {
    private static final String NAME = "settings.txt";

    private final Path file;

    public SettingsFile(Path file) {
        this.file = file;
    }

    /** The file in the folder this platform keeps settings in. */
    public static SettingsFile atHome() {
        ProjectDirectories folders = ProjectDirectories.from("org", "moultwright", "Moultwright");
        return new SettingsFile(Path.of(folders.configDir, NAME));
    }

    /** A file of another name in the same folder. */
    public Path beside(String name) {
        return file.resolveSibling(name);
    }

    /**
     * Reads the settings.
     *
     * @throws UncheckedIOException if the file cannot be read, or cannot be moved aside
     */
    public Loaded load() {
        if (Files.notExists(file)) {
            return new Loaded(Settings.DEFAULT, Optional.empty());
        }
        try {
            return new Loaded(read(), Optional.empty());
        } catch (IllegalArgumentException e) {
            return new Loaded(Settings.DEFAULT, Optional.of(moveAside()));
        }
    }

    /** The settings as they stand, the defaults where they are not understood; the file is left as it is. */
    public Settings glance() {
        try {
            return Files.notExists(file) ? Settings.DEFAULT : read();
        } catch (IllegalArgumentException | UncheckedIOException notUnderstood) {
            return Settings.DEFAULT;
        }
    }

    /**
     * Writes the settings; they are on disk when this returns.
     *
     * @throws UncheckedIOException if that cannot be done; the file is then as it was
     */
    public void save(Settings settings) {
        try {
            WholeFile.write(file, SettingsText.print(settings));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Bytes that are no text are as little understood as a wrong word. */
    private Settings read() {
        try {
            String text = new String(Files.readAllBytes(file), StandardCharsets.UTF_8);
            return SettingsText.parse(text.lines().toList());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Path moveAside() {
        try {
            for (int number = 1; ; number++) {
                Path aside = file.resolveSibling(NAME + ".not-understood-" + number);
                if (Files.notExists(aside)) {
                    return Files.move(file, aside);
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * Settings as they were found.
     *
     * @param keptAside where a file that was not understood now is
     */
    public record Loaded(Settings settings, Optional<Path> keptAside) {}
}
