package org.moultwright.ui.photo;

import javafx.scene.control.Button;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.Tooltip;
import javafx.scene.image.ImageView;
import org.moultwright.domain.PhotoNote;
import org.moultwright.language.Texts;

/** A small photo that opens large. */
final class PhotoThumb extends Button {
    private static final double WIDTH = 56;
    private static final double HEIGHT = 42;

    PhotoThumb(PhotoNote photo, PhotoDesk desk, Runnable open) {
        ImageView picture = new ImageView();
        picture.setPreserveRatio(true);
        picture.setFitWidth(WIDTH);
        picture.setFitHeight(HEIGHT);
        setGraphic(picture);
        setContentDisplay(ContentDisplay.GRAPHIC_ONLY);
        getStyleClass().add("photo-thumb");
        setAccessibleText(Texts.say("photo, {0}", PhotoWords.of(photo, desk.days())));
        setTooltip(new Tooltip(PhotoWords.of(photo, desk.days())));
        setOnAction(event -> open.run());
        desk.pictures().small(photo.file(), picture::setImage, this::refused);
    }

    private void refused(String problem) {
        setText("?");
        setContentDisplay(ContentDisplay.TEXT_ONLY);
        setAccessibleText(getAccessibleText() + ". " + problem);
        setTooltip(new Tooltip(problem));
    }
}
