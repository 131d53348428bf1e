package org.moultwright.ui.takealong;

import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.VBox;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.Banner;
import org.moultwright.ui.control.Buttons;
import org.moultwright.ui.control.Tone;

/** Hands the desk to a sitter, once the keeper has said so twice. */
final class HandOver extends VBox {
    private static final String ASKED = Texts.say("Hand the desk to a sitter?");
    private static final String MEANING =
            Texts.say("It then shows only the trays, and takes only the dead, water, and the taking back of "
                    + "these; so it stays when it is opened anew. At its foot you take it back.");
    private static final String NO_NUMBER =
            Texts.say("No number to call is written: write one below first, or hand over a sheet.");

    private final SitterViewModel sitter;
    private final TakeAlongViewModel model;
    private final Banner question = new Banner(Tone.ACCENT);

    HandOver(SitterViewModel sitter, TakeAlongViewModel model) {
        this.sitter = sitter;
        this.model = model;
        Banner problem = new Banner(Tone.BAD);
        problem.sentenceProperty().bind(sitter.problemProperty());
        managedProperty().bind(question.visibleProperty().or(problem.visibleProperty()));
        getChildren().addAll(question, problem);
    }

    Node button() {
        return Buttons.secondary(Texts.say("Hand the desk over"), this::ask);
    }

    private void ask() {
        model.keepTyped();
        Button yes = Buttons.primary(Texts.say("Hand it over"), () -> {
            close();
            sitter.handOver();
        });
        Button no = Buttons.secondary(Texts.say("Not yet"), this::close);
        question.setActions(yes, no);
        question.detailProperty().set(model.phoneProperty().get().isBlank() ? MEANING + " " + NO_NUMBER : MEANING);
        question.sentenceProperty().set(ASKED);
        no.requestFocus();
    }

    private void close() {
        question.sentenceProperty().set("");
    }
}
