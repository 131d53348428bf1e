package org.moultwright.ui.broods;

import javafx.scene.layout.GridPane;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.Banner;
import org.moultwright.ui.control.Buttons;
import org.moultwright.ui.control.Card;
import org.moultwright.ui.control.FormFoot;
import org.moultwright.ui.control.Tone;
import org.moultwright.ui.control.Words;

/** Lays out the form for a sac taken from its mother. */
final class PullView extends SacFormView {
    PullView(PullForm form) {
        super(form);
        getChildren().addAll(head(Texts.say("{0}, taken from its mother", form.about()), Texts.say("still closed")));
        Banner caution = new Banner(Tone.ACCENT);
        caution.sentenceProperty().set(SacCautions.MOTHER);
        GridPane grid = wide();
        row(
                grid,
                0,
                Words.plain(Texts.say("Taken on")),
                inputs().day(
                                form.day(),
                                Texts.say("today"),
                                form.day().textProperty().map(form::dayInWords)));
        row(
                grid,
                1,
                Words.plain(Texts.say("Put into")),
                inputs().choice(form.inside(), Texts.say("stays where it is"), form::places));
        getChildren()
                .addAll(
                        caution,
                        new Card(
                                grid,
                                Words.wrapped(
                                        Words.caption(
                                                Texts.say(
                                                        "Its warm-days come from there from then on. Whatever you type is on disk at once.")))),
                        new FormFoot(Buttons.primary(Texts.say("Keep"), this::keep)));
    }
}
