package org.moultwright.store.photo;

import java.util.Locale;
import javax.imageio.ImageReader;
import javax.imageio.event.IIOReadWarningListener;

/** Hears a reader say that a picture ends too early; it fills the rest with grey and goes on. */
final class CutOff implements IIOReadWarningListener {
    private boolean said;

    @Override
    public void warningOccurred(ImageReader reader, String warning) {
        String words = warning.toLowerCase(Locale.ROOT);
        said |= words.contains("premature") || words.contains("truncated");
    }

    boolean isSaid() {
        return said;
    }
}
