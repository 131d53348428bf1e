package org.moultwright.settings;

import java.util.Map;
import java.util.Optional;

/** How a keeper works at the desk, as values of settings. */
final class DeskSettingsText {
    private static final String PHOTO_FOLDER = "photo-folder";

    private DeskSettingsText() {}

    static Map<String, String> print(DeskSettings desk) {
        return Map.of(PHOTO_FOLDER, desk.photoFolder());
    }

    /** Settings with one value read; empty where it is none of theirs. */
    static Optional<DeskSettings> with(DeskSettings desk, String name, String value) {
        return name.equals(PHOTO_FOLDER) ? Optional.of(desk.withPhotoFolder(value)) : Optional.empty();
    }
}
