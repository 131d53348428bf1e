package org.moultwright.ui.round;

import java.nio.file.Path;
import java.util.List;
import javafx.beans.InvalidationListener;
import javafx.beans.WeakInvalidationListener;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.Banner;
import org.moultwright.ui.control.Buttons;
import org.moultwright.ui.control.Flow;
import org.moultwright.ui.control.KeyCap;
import org.moultwright.ui.control.Tone;
import org.moultwright.ui.control.Words;

/** What is said of photos over a sheet: new ones that may be of its tray, and those that could not be attached. */
final class PhotoNotices extends VBox {
    private final TrayPhotos photos;
    private final String tray;
    private final Label question = Words.strong("");

    /** Kept, for only a weak hand holds it: what is offered outlives this sheet. */
    private final InvalidationListener showOffer = changed -> showOffer();

    PhotoNotices(TrayPhotos photos, String tray) {
        this.photos = photos;
        this.tray = tray;
        Label news = Words.caption("");
        news.textProperty().bind(photos.newsProperty());
        news.managedProperty().bind(news.textProperty().isNotEmpty());
        Banner problem = new Banner(Tone.WARN);
        problem.sentenceProperty().bind(photos.problemProperty());
        Button close = Buttons.plain(Texts.say("Close"), photos::putProblemAway);
        close.setGraphic(new KeyCap("Esc"));
        problem.setActions(close);
        // As wide as the sheet, however long the sentence.
        problem.setPrefWidth(0);
        managedProperty()
                .bind(news.managedProperty()
                        .or(question.textProperty().isNotEmpty())
                        .or(problem.managedProperty()));
        getChildren().addAll(news, problem);
        photos.offered().addListener(new WeakInvalidationListener(showOffer));
        showOffer();
    }

    private Node offer() {
        Button attach = Buttons.secondary(Texts.say("Attach"), photos::attachOffered);
        attach.setGraphic(new KeyCap("A"));
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        Flow offer = new Flow(question, gap, attach, Buttons.plain(Texts.say("No"), photos::declineOffered));
        offer.getStyleClass().addAll("banner", Tone.ACCENT.styleClass(), "photo-offer");
        offer.managedProperty().bind(question.textProperty().isNotEmpty());
        offer.visibleProperty().bind(offer.managedProperty());
        return offer;
    }

    /** Made when there first is one. */
    private void showOffer() {
        List<Path> pictures = photos.offered().get();
        question.setText(
                switch (pictures.size()) {
                    case 0 -> "";
                    case 1 -> Texts.say("A new picture: of {0}?", tray);
                    default -> Texts.say("{0} new pictures: of {1}?", pictures.size(), tray);
                });
        if (!pictures.isEmpty() && question.getParent() == null) {
            getChildren().add(1, offer());
        }
    }
}
