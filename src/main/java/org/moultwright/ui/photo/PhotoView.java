package org.moultwright.ui.photo;

import java.util.List;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.image.ImageView;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.moultwright.domain.PhotoNote;
import org.moultwright.language.Texts;
import org.moultwright.text.DayWords;
import org.moultwright.ui.control.Banner;
import org.moultwright.ui.control.Buttons;
import org.moultwright.ui.control.Flow;
import org.moultwright.ui.control.KeyCap;
import org.moultwright.ui.control.Tone;
import org.moultwright.ui.control.Words;

/** One photo as large as there is room, and the others a key away. */
public final class PhotoView extends VBox {
    private final List<PhotoNote> photos;
    private final Pictures pictures;
    private final DayWords days;
    private final ImageView picture = new ImageView();
    private final StackPane frame = new StackPane(picture);
    private final Label words = Words.strong("");
    private final Label place = Words.muted("");
    private final Banner problem = new Banner(Tone.WARN);
    private final Runnable close;
    private final Button back;
    private int position;

    /**
     * @param first which of them is shown first
     * @param close takes it away
     */
    public PhotoView(List<PhotoNote> photos, int first, Pictures pictures, DayWords days, Runnable close) {
        this.photos = List.copyOf(photos);
        this.pictures = pictures;
        this.days = days;
        this.close = close;
        this.back = Buttons.secondary(Texts.say("Close"), close);
        this.position = first;
        picture.setPreserveRatio(true);
        picture.setSmooth(true);
        picture.fitWidthProperty().bind(frame.widthProperty());
        picture.fitHeightProperty().bind(frame.heightProperty());
        frame.setMinSize(0, 0);
        setVgrow(frame, Priority.ALWAYS);
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        Flow foot = new Flow(
                words,
                place,
                gap,
                KeyCap.hint("← →", Texts.say("the others")),
                KeyCap.hint("Esc", Texts.say("back")),
                back);
        foot.getStyleClass().add("photo-foot");
        getStyleClass().addAll("page", "photo-large");
        getChildren().addAll(problem, frame, foot);
        addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
        show();
    }

    /** Takes the keyboard to where it is seen that it is here. */
    void takeFocus() {
        back.requestFocus();
    }

    private void pressed(KeyEvent event) {
        switch (event.getCode()) {
            case LEFT, PAGE_UP -> step(-1);
            case RIGHT, PAGE_DOWN -> step(1);
            case ESCAPE -> close.run();
            default -> {
                return;
            }
        }
        event.consume();
    }

    private void step(int by) {
        int next = position + by;
        if (next >= 0 && next < photos.size()) {
            position = next;
            show();
        }
    }

    private void show() {
        PhotoNote photo = photos.get(position);
        String said = PhotoWords.of(photo, days);
        words.setText(said);
        place.setText(Texts.say("{0} of {1}", position + 1, photos.size()));
        problem.sentenceProperty().set("");
        picture.setImage(null);
        frame.setAccessibleText(Texts.say("photo, {0}", said));
        pictures.large(
                photo.file(),
                image -> {
                    if (photo.equals(photos.get(position))) {
                        picture.setImage(image);
                    }
                },
                problem.sentenceProperty()::set);
    }
}
