package org.moultwright.ui.broods;

import javafx.scene.layout.GridPane;
import org.moultwright.ui.control.Banner;
import org.moultwright.ui.control.Buttons;
import org.moultwright.ui.control.Card;
import org.moultwright.ui.control.Tone;
import org.moultwright.ui.control.Words;

/** Lays out the form for a sac taken from its mother. */
final class PullView extends SacFormView {
    PullView(PullForm form) {
        super(form);
        getChildren()
                .addAll(head(
                        form.about() + ", taken from its mother", "still closed", Buttons.primary("Keep", this::keep)));
        Banner caution = new Banner(Tone.ACCENT);
        caution.sentenceProperty().set(SacCautions.MOTHER);
        GridPane grid = wide();
        row(
                grid,
                0,
                Words.plain("Taken on"),
                inputs().day(form.day(), "today", form.day().textProperty().map(form::dayInWords)));
        row(grid, 1, Words.plain("Put into"), inputs().choice(form.inside(), "stays where it is", form::places));
        getChildren()
                .addAll(
                        caution,
                        new Card(
                                grid,
                                Words.wrapped(
                                        Words.caption(
                                                "Its warm-days come from there from then on. Whatever you type is on disk at once."))));
    }
}
