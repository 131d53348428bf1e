package org.moultwright.ui.round;

import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.moultwright.domain.PhotoNote;
import org.moultwright.ui.control.KeyCap;
import org.moultwright.ui.control.Words;
import org.moultwright.ui.photo.PhotoStrip;

/** The photos of the open tray. */
final class PhotosCard extends VBox {
    /** As many as the side has room for. */
    private static final int MOST = 2;

    private static final String HOW = "drop, or Ctrl + V";

    private final OpenSheet sheet;
    private final PhotoStrip strip;
    private final Label count = Words.caption("");

    PhotosCard(TrayPhotos photos, OpenSheet sheet) {
        this.sheet = sheet;
        this.strip = new PhotoStrip(photos.desk(), MOST);
        HBox title = new HBox(Words.cardTitle("Photos"), new KeyCap("P"), count);
        title.getStyleClass().add("key-hint");
        strip.managedProperty().bind(strip.visibleProperty());
        getStyleClass().add("card");
        setMinHeight(USE_PREF_SIZE);
        getChildren().addAll(title, strip);
        sheet.fields().factsProperty().addListener(changed -> show());
        show();
    }

    /** Opens the newest photo large, where there is one. */
    void open() {
        strip.openFirst();
    }

    private void show() {
        List<PhotoNote> all = TrayPhotos.of(sheet.facts());
        strip.show(all);
        strip.setVisible(!all.isEmpty());
        count.setText(all.isEmpty() ? HOW : all.size() > MOST ? all.size() + " in all" : "");
    }
}
