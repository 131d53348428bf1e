package org.moultwright.ui.photo;

import org.moultwright.domain.PhotoNote;
import org.moultwright.text.DayWords;

/** A photo in words. */
final class PhotoWords {
    private PhotoWords() {}

    static String of(PhotoNote photo, DayWords days) {
        String when = "%s, %s, %s".formatted(photo.tray(), days.shortDay(photo.at()), days.clock(photo.at()));
        return photo.name().isBlank() ? when : when + ", " + photo.name();
    }
}
