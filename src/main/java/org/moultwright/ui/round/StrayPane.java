package org.moultwright.ui.round;

import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.scene.layout.VBox;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.Banner;
import org.moultwright.ui.control.Buttons;
import org.moultwright.ui.control.Tone;
import org.moultwright.workflow.SheetDraft;

/** What must be said of sheets begun: that one's tray is gone, or that they are not on disk. */
final class StrayPane extends VBox {
    StrayPane(RoundViewModel model) {
        Banner stray = new Banner(Tone.WARN);
        stray.setActions(Buttons.secondary(Texts.say("Drop it"), model.begun()::dropStray));
        ReadOnlyObjectProperty<Optional<SheetDraft>> first = model.begun().strayProperty();
        stray.sentenceProperty()
                .bind(first.map(draft ->
                        draft.map(gone -> RoundWords.stray(gone, model.days())).orElse("")));
        stray.detailProperty()
                .bind(first.map(draft -> draft.map(gone -> RoundWords.written(
                                gone, model.vocabularyProperty().get()))
                        .orElse("")));
        Banner notKept = new Banner(Tone.BAD);
        notKept.sentenceProperty().bind(model.begun().problemProperty());
        managedProperty().bind(stray.managedProperty().or(notKept.managedProperty()));
        getStyleClass().add("strays");
        getChildren().addAll(stray, notKept);
    }
}
