package org.moultwright.ui.broods;

import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.Banner;
import org.moultwright.ui.control.Buttons;
import org.moultwright.ui.control.Columns;
import org.moultwright.ui.control.FormFoot;
import org.moultwright.ui.control.Tone;

/** Lays out the sheet on which a sac is opened: cautions, what was in it, and where it goes. */
final class OpeningView extends SacFormView {
    OpeningView(OpeningForm form) {
        super(form);
        getChildren()
                .addAll(head(
                        Texts.say("Open {0}", form.about()), Texts.say("sort, count or weigh, spread over trays")));
        Banner caution = new Banner(Tone.ACCENT);
        caution.sentenceProperty().set(SacCautions.HAIRS);
        caution.detailProperty().set(SacCautions.MOTHER + " " + SacCautions.HYGIENE);
        QuestionBanner question = new QuestionBanner(form.questionProperty());
        VBox cautions = new VBox(caution);
        cautions.visibleProperty().bind(question.visibleProperty().not());
        cautions.managedProperty().bind(cautions.visibleProperty());
        SortingCard sorting = new SortingCard(form, inputs());
        SpreadingCard spreading = new SpreadingCard(form, inputs());
        HBox.setHgrow(spreading, Priority.ALWAYS);
        Columns cards = new Columns(sorting, spreading);
        cards.getStyleClass().add("card-row");
        setVgrow(cards, Priority.ALWAYS);
        FormFoot foot = new FormFoot(Buttons.primary(Texts.say("Keep the opening"), this::keep));
        getChildren().addAll(cautions, question, cards, foot);
        addEventFilter(KeyEvent.KEY_PRESSED, event -> {
            if (question.pressed(event)) {
                event.consume();
            }
        });
    }
}
