package org.moultwright.ui.photo;

import java.util.Optional;
import org.moultwright.language.Texts;
import org.moultwright.task.Runner;
import org.moultwright.text.DayWords;
import org.moultwright.workflow.AttachPhotos;

/**
 * All that screens need to show and attach photos.
 *
 * @param attach attaches them to a tray; empty where nothing can be attached
 * @param pictures reads them, aside
 * @param offers new pictures in the folder the keeper chose
 * @param large shows them large
 * @param days the keeper's days
 */
public record PhotoDesk(
        Optional<AttachPhotos> attach, Pictures pictures, PhotoOffers offers, LargePhotos large, DayWords days) {

    /** A desk without photos. */
    public static PhotoDesk none(Runner runner, DayWords days) {
        return new PhotoDesk(
                Optional.empty(),
                new Pictures(
                        (file, longestPixels) -> {
                            throw new IllegalStateException(Texts.say("There are no photos here."));
                        },
                        runner),
                PhotoOffers.NONE,
                (photos, first) -> {},
                days);
    }
}
