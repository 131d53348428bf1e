package org.moultwright.ui.photo;

import java.io.File;
import java.util.List;
import java.util.Optional;
import javafx.scene.image.Image;
import javafx.scene.input.Clipboard;
import org.moultwright.language.Texts;
import org.moultwright.ui.print.Pixels;
import org.moultwright.workflow.AttachPhotos.Offer;

/** The pictures on a clipboard, or under a hand that drags them: files first, else the picture itself. */
public final class DroppedPictures {
    private static final String NAMELESS = Texts.say("pasted picture");

    private DroppedPictures() {}

    public static boolean areOn(Clipboard board) {
        return board.hasFiles() || board.hasImage();
    }

    public static List<Offer> of(Clipboard board) {
        List<Offer> files =
                board.getFiles().stream().map(File::toPath).map(Offer::of).toList();
        if (!files.isEmpty()) {
            return files;
        }
        Optional<Image> image = Optional.ofNullable(board.getImage());
        return image.map(picture -> Offer.of(Pixels.of(picture), NAMELESS)).stream()
                .toList();
    }
}
