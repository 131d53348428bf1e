package org.moultwright.language;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The translations there are: one file a language, such as {@code de.po}, in the keeper's folder or part of the program.
 * The keeper's comes first.
 */
public record Translations(Path folder) {
    private static final String ENDING = ".po";

    /** The tags of the languages in the keeper's folder. */
    public List<String> own() {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(ENDING))
                    .map(name -> name.substring(0, name.length() - ENDING.length()))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * The translation for a language, by its whole tag or its language alone; empty where there is none.
     *
     * @throws IllegalArgumentException if there is one that is not understood
     * @throws UncheckedIOException if it cannot be read
     */
    public Optional<Language> find(Locale wanted) {
        boolean isEnglish =
                wanted.getLanguage().isEmpty() || wanted.getLanguage().equals("en");
        if (isEnglish && !Files.isDirectory(folder)) {
            return Optional.empty();
        }
        return Stream.of(wanted.toLanguageTag(), wanted.getLanguage())
                .filter(tag -> !tag.isEmpty())
                .flatMap(tag -> lines(tag).stream())
                .findFirst()
                .map(TranslationFile::read);
    }

    private Optional<List<String>> lines(String tag) {
        Path file = folder.resolve(tag + ENDING);
        try {
            if (Files.isRegularFile(file)) {
                return Optional.of(Files.readAllLines(file));
            }
            try (@Nullable InputStream bundled = Translations.class.getResourceAsStream(tag + ENDING)) {
                return bundled == null
                        ? Optional.empty()
                        : Optional.of(new String(bundled.readAllBytes(), StandardCharsets.UTF_8)
                                .lines()
                                .toList());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
