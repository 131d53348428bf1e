package org.moultwright.ui.round;

import java.util.List;
import javafx.scene.control.Label;
import org.moultwright.domain.PhotoNote;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.Flow;
import org.moultwright.ui.control.KeyCap;
import org.moultwright.ui.control.Words;
import org.moultwright.ui.photo.PhotoStrip;

/** The photos of the open tray, beside its name; how to attach one where there is none. */
final class SheetPhotos extends Flow {
    /** As many as have room beside the facts of a tray. */
    private static final int MOST = 2;

    private final OpenSheet sheet;
    private final PhotoStrip strip;
    private final Label words = Words.caption("");

    SheetPhotos(TrayPhotos photos, OpenSheet sheet) {
        this.sheet = sheet;
        this.strip = new PhotoStrip(photos.desk(), MOST);
        KeyCap key = new KeyCap("P");
        strip.managedProperty().bind(strip.visibleProperty());
        key.visibleProperty().bind(strip.visibleProperty());
        key.managedProperty().bind(strip.visibleProperty());
        words.managedProperty().bind(words.textProperty().isNotEmpty());
        getStyleClass().add("photo-strip");
        getChildren().addAll(words, strip, key);
        sheet.fields().factsProperty().addListener(changed -> show());
        show();
    }

    /** Opens the newest large, where there is one. */
    void open() {
        strip.openFirst();
    }

    private void show() {
        List<PhotoNote> all = TrayPhotos.of(sheet.facts());
        strip.show(all);
        strip.setVisible(!all.isEmpty());
        if (all.isEmpty()) {
            words.setText(Texts.say("drop a photo, or Ctrl + V"));
        } else {
            words.setText(all.size() > MOST ? Texts.say("{0} photos", all.size()) : "");
        }
    }
}
