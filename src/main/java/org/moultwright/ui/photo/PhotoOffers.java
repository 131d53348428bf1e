package org.moultwright.ui.photo;

import java.nio.file.Path;
import java.util.List;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.value.ObservableObjectValue;

/** New pictures in the folder the keeper chose, which may be of the tray under the hand. */
public interface PhotoOffers {
    /** None, ever. */
    PhotoOffers NONE = new PhotoOffers() {
        private final ObservableObjectValue<List<Path>> nothing = new SimpleObjectProperty<>(List.of());

        @Override
        public ObservableObjectValue<List<Path>> offered() {
            return nothing;
        }

        @Override
        public void decline(List<Path> pictures) {}

        @Override
        public void offerAgain(List<Path> pictures) {}
    };

    ObservableObjectValue<List<Path>> offered();

    /** Offers these no more while the desk is open. */
    void decline(List<Path> pictures);

    /** Offers these once more: where they were attached, that was taken back. */
    void offerAgain(List<Path> pictures);
}
