package org.moultwright.ui.photo;

import java.util.List;
import java.util.stream.IntStream;
import org.moultwright.domain.PhotoNote;
import org.moultwright.ui.control.Flow;

/** A row of photos, each of which opens large among all of them. */
public final class PhotoStrip extends Flow {
    private final PhotoDesk desk;
    private final int most;
    private List<PhotoNote> shown = List.of();

    /** @param most how many have room; the others are seen large */
    public PhotoStrip(PhotoDesk desk, int most) {
        this.desk = desk;
        this.most = most;
        getStyleClass().add("photo-strip");
    }

    /** Shows these, in this order; nothing is made anew where they are shown already. */
    public void show(List<PhotoNote> photos) {
        if (photos.equals(shown)) {
            return;
        }
        shown = List.copyOf(photos);
        getChildren()
                .setAll(IntStream.range(0, Math.min(most, shown.size()))
                        .mapToObj(i -> new PhotoThumb(shown.get(i), desk, () -> open(i)))
                        .toList());
    }

    /** Opens the first large, if there is one. */
    public void openFirst() {
        if (!shown.isEmpty()) {
            open(0);
        }
    }

    private void open(int first) {
        desk.large().show(shown, first);
    }
}
