package org.moultwright.ui.photo;

import java.util.List;
import java.util.Optional;
import org.moultwright.domain.PhotoNote;
import org.moultwright.text.DayWords;
import org.moultwright.ui.shell.OverSheet;

/**
 * Large photos, laid over the open screen. In the desk's own window: one of its own would have some window managers take
 * the desk out of the whole screen, or stand behind it.
 */
public final class PhotoSheet extends OverSheet implements LargePhotos {
    private final Pictures pictures;
    private final DayWords days;
    private Optional<PhotoView> view = Optional.empty();

    public PhotoSheet(Pictures pictures, DayWords days) {
        this.pictures = pictures;
        this.days = days;
        visibleProperty().addListener((observed, before, seen) -> {
            if (!seen) {
                // No picture is kept that nobody looks at.
                getChildren().clear();
            }
        });
    }

    @Override
    public void show(List<PhotoNote> photos, int first) {
        PhotoView large = new PhotoView(photos, first, pictures, days, this::close);
        view = Optional.of(large);
        getChildren().setAll(large);
        open();
    }

    @Override
    protected void opened() {
        view.ifPresent(PhotoView::takeFocus);
    }
}
