package org.moultwright.ui.round;

import javafx.css.PseudoClass;
import javafx.scene.Node;
import javafx.scene.input.DragEvent;
import javafx.scene.input.TransferMode;
import org.moultwright.ui.photo.DroppedPictures;

/** Takes pictures dropped on a sheet. */
final class PhotoDrops {
    private static final PseudoClass OVER = PseudoClass.getPseudoClass("drop-here");

    private PhotoDrops() {}

    static void on(Node sheet, TrayPhotos photos) {
        sheet.setOnDragOver(event -> {
            if (DroppedPictures.areOn(event.getDragboard())) {
                event.acceptTransferModes(TransferMode.COPY);
                sheet.pseudoClassStateChanged(OVER, true);
                event.consume();
            }
        });
        sheet.setOnDragExited(event -> sheet.pseudoClassStateChanged(OVER, false));
        sheet.setOnDragDropped(event -> dropped(event, photos));
    }

    private static void dropped(DragEvent event, TrayPhotos photos) {
        boolean isTaken = DroppedPictures.areOn(event.getDragboard());
        if (isTaken) {
            photos.attach(DroppedPictures.of(event.getDragboard()));
        }
        event.setDropCompleted(isTaken);
        event.consume();
    }
}
