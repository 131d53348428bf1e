package org.moultwright.settings;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.moultwright.domain.code.CodePattern;

/** How a keeper works at the desk, as values of settings. */
final class DeskSettingsText {
    private static final String PHOTO_FOLDER = "photo-folder";

    private static final String CODE_PATTERN = "code-pattern";

    private DeskSettingsText() {}

    static Map<String, String> print(DeskSettings desk) {
        Map<String, String> values = new LinkedHashMap<>();
        values.put(PHOTO_FOLDER, desk.photoFolder());
        values.put(CODE_PATTERN, desk.codePattern().written());
        return values;
    }

    /**
     * Settings with one value read; empty where it is none of theirs.
     *
     * @throws IllegalArgumentException if it is one of theirs and not understood
     */
    static Optional<DeskSettings> with(DeskSettings desk, String name, String value) {
        return switch (name) {
            case PHOTO_FOLDER -> Optional.of(desk.withPhotoFolder(value));
            case CODE_PATTERN -> Optional.of(desk.withCodePattern(pattern(value)));
            default -> Optional.empty();
        };
    }

    private static CodePattern pattern(String value) {
        return CodePattern.read(value)
                .orElseThrow(() -> new IllegalArgumentException(
                        "settings hold the pattern of codes '" + value + "', by which no code can be made"));
    }
}
