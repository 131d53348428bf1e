package org.moultwright.ui.label;

import javafx.beans.binding.Bindings;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.Buttons;
import org.moultwright.ui.control.Flow;
import org.moultwright.ui.control.Words;

/** The sheets as they will be printed, one at a time. */
public final class SheetCard extends VBox {
    private final PreviewModel preview;

    public SheetCard(SheetForm form, PreviewModel preview) {
        this.preview = preview;
        Label title = Words.cardTitle("");
        title.textProperty()
                .bind(Bindings.createStringBinding(
                        () -> LabelWords.sheetTitle(
                                preview.jobProperty().get(),
                                preview.pageProperty().get()),
                        preview.jobProperty(),
                        preview.pageProperty()));
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        Flow heading = new Flow(
                title,
                gap,
                turn(Texts.say("Back"), Texts.say("sheet before"), -1),
                turn(Texts.say("Next"), Texts.say("next sheet"), 1));
        heading.getStyleClass().add("key-hint");
        SheetPreview sheet = new SheetPreview(form, preview);
        setVgrow(sheet, Priority.ALWAYS);
        getStyleClass().addAll("card", "bench-sheet");
        getChildren().addAll(heading, sheet, Words.caption(Texts.say("Click the first label that is still free.")));
    }

    private Button turn(String word, String name, int by) {
        Button button = Buttons.plain(word, () -> preview.turn(by));
        button.setAccessibleText(name);
        button.visibleProperty()
                .bind(preview.jobProperty()
                        .map(job -> job.isPresent() && job.get().sheets() > 1));
        button.managedProperty().bind(button.visibleProperty());
        return button;
    }
}
