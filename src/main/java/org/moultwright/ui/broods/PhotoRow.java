package org.moultwright.ui.broods;

import java.util.List;
import javafx.beans.InvalidationListener;
import javafx.scene.control.Label;
import org.moultwright.domain.PhotoNote;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.Flow;
import org.moultwright.ui.control.Words;
import org.moultwright.ui.photo.PhotoStrip;

/** The photos of the brood's trays, the newest first; it takes no room where there are none. */
final class PhotoRow extends Flow {
    private static final int MOST = 10;

    PhotoRow(BroodPage page) {
        PhotoStrip strip = new PhotoStrip(page.photoDesk(), MOST);
        Label title = Words.whole(Words.cardTitle(Texts.say("Photos")));
        Label count = Words.whole(Words.caption(""));
        InvalidationListener show = changed -> {
            List<PhotoNote> all = page.photos();
            strip.show(all);
            count.setText(all.size() > MOST ? Texts.say("{0} in all", all.size()) : "");
            setVisible(!all.isEmpty());
        };
        managedProperty().bind(visibleProperty());
        page.beside().facts().addListener(show);
        getStyleClass().addAll("card", "photo-row");
        getChildren().addAll(title, strip, count);
        show.invalidated(page.beside().facts());
    }
}
