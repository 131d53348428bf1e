package org.moultwright.boot;

import javafx.scene.control.Button;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.Banner;
import org.moultwright.ui.control.Buttons;
import org.moultwright.ui.control.Tone;
import org.moultwright.ui.control.Words;

/** Lays out a refusal: the sentence, what to do, and Close, which Enter and Esc press too. */
final class RefusalView extends VBox {
    RefusalView(RefusedOpening refusal, Runnable close) {
        Banner banner = new Banner(Tone.BAD);
        banner.sentenceProperty().set(refusal.sentence());
        banner.detailProperty().set(refusal.remedy());
        Button button = Buttons.primary(Texts.say("Close"), close);
        button.setDefaultButton(true);
        button.setCancelButton(true);
        HBox actions = new HBox(Words.muted(refusal.code()), button);
        actions.getStyleClass().add("page-actions");
        getStyleClass().add("page");
        getChildren().addAll(Words.styled(Texts.say("The desk cannot be opened"), "page-title"), banner, actions);
    }
}
