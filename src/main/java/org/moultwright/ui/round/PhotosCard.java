package org.moultwright.ui.round;

import java.nio.file.Path;
import java.util.List;
import javafx.beans.InvalidationListener;
import javafx.beans.WeakInvalidationListener;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.moultwright.domain.PhotoNote;
import org.moultwright.ui.control.Banner;
import org.moultwright.ui.control.Buttons;
import org.moultwright.ui.control.KeyCap;
import org.moultwright.ui.control.Tone;
import org.moultwright.ui.control.Words;
import org.moultwright.ui.photo.PhotoStrip;

/** The photos of the open tray, and new ones that may be of it. */
final class PhotosCard extends VBox {
    /** As many as the side has room for. */
    private static final int MOST = 2;

    private final TrayPhotos photos;
    private final OpenSheet sheet;
    private final PhotoStrip strip;
    private final Label count = Words.caption("");
    private final Banner offer = new Banner(Tone.ACCENT);

    /** Kept, for only a weak hand holds it: what is offered outlives this card. */
    private final InvalidationListener showOffer = changed -> showOffer();

    PhotosCard(TrayPhotos photos, OpenSheet sheet) {
        this.photos = photos;
        this.sheet = sheet;
        this.strip = new PhotoStrip(photos.desk(), MOST);
        HBox title = new HBox(Words.cardTitle("Photos"), new KeyCap("P"), count);
        title.getStyleClass().add("key-hint");
        Label how = Words.wrapped(Words.caption("Drop pictures on the sheet, or Ctrl + V."));
        how.managedProperty().bind(strip.visibleProperty().not());
        how.visibleProperty().bind(how.managedProperty());
        strip.managedProperty().bind(strip.visibleProperty());
        Label news = Words.caption("");
        news.textProperty().bind(photos.newsProperty());
        news.managedProperty().bind(news.textProperty().isNotEmpty());
        Banner problem = new Banner(Tone.WARN);
        problem.sentenceProperty().bind(photos.problemProperty());
        Button attach = Buttons.secondary("Attach", photos::attachOffered);
        attach.setGraphic(new KeyCap("A"));
        offer.setActions(attach, Buttons.plain("No", photos::declineOffered));
        getStyleClass().add("card");
        setMinHeight(USE_PREF_SIZE);
        getChildren().addAll(title, strip, how, news, offer, problem);
        sheet.fields().factsProperty().addListener(changed -> show());
        photos.offered().addListener(new WeakInvalidationListener(showOffer));
        show();
        showOffer();
    }

    /** Opens the newest photo large, where there is one. */
    void open() {
        strip.openFirst();
    }

    private void show() {
        List<PhotoNote> all = TrayPhotos.of(sheet.facts());
        strip.show(all);
        strip.setVisible(!all.isEmpty());
        count.setText(all.size() > MOST ? all.size() + " in all" : "");
    }

    private void showOffer() {
        List<Path> pictures = photos.offered().get();
        offer.sentenceProperty()
                .set(
                        switch (pictures.size()) {
                            case 0 -> "";
                            case 1 ->
                                "A new picture: of %s?".formatted(sheet.facts().tray());
                            default ->
                                "%d new pictures: of %s?"
                                        .formatted(
                                                pictures.size(), sheet.facts().tray());
                        });
    }
}
