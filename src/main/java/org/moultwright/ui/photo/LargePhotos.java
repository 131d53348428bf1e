package org.moultwright.ui.photo;

import java.util.List;
import org.moultwright.domain.PhotoNote;

/** Shows photos as large as there is room. */
public interface LargePhotos {
    /**
     * Shows them one at a time.
     *
     * @param first which of them is shown first
     */
    void show(List<PhotoNote> photos, int first);
}
