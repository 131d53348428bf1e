package org.moultwright.ui.broods;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.Banner;
import org.moultwright.ui.control.Buttons;
import org.moultwright.ui.control.Card;
import org.moultwright.ui.control.Flow;
import org.moultwright.ui.control.PageHeader;
import org.moultwright.ui.control.Scrolled;
import org.moultwright.ui.control.Tone;
import org.moultwright.ui.control.Words;
import org.moultwright.workflow.BroodFolders.FolderProblem;

/** Lays out a brood folder on its way in: how far it is, or what is wrong in it, or what to know of it. */
final class TakeInView extends VBox {
    private final TakeInViewModel model;

    TakeInView(TakeInViewModel model) {
        this.model = model;
        getStyleClass().add("page");
        TakeInViewModel.State state = model.stateProperty().get();
        if (state instanceof TakeInViewModel.Refused refused) {
            showRefused(refused);
        } else if (state instanceof TakeInViewModel.TakenIn takenIn) {
            showTakenIn(takenIn);
        } else {
            showRunning();
        }
    }

    private void showRunning() {
        ProgressBar bar = new ProgressBar();
        bar.setMaxWidth(Double.MAX_VALUE);
        bar.accessibleTextProperty().bind(model.progressProperty());
        Label words = Words.plain("");
        words.textProperty().bind(model.progressProperty());
        show(Buttons.secondary(Texts.say("Stop"), model::cancel));
        getChildren().add(new Card(words, bar, Words.caption(Texts.say("All of it is taken in, or nothing."))));
    }

    private void showRefused(TakeInViewModel.Refused refused) {
        show(
                Buttons.secondary(Texts.say("Back"), model::close),
                Buttons.secondary(Texts.say("Another folder"), model::choose),
                Buttons.primary(Texts.say("Try again"), () -> model.takeIn(refused.folder())));
        Banner banner = banner(Tone.BAD, refused.sentence());
        getChildren().add(banner);
        if (!refused.problems().isEmpty()) {
            banner.detailProperty().set(TakeInWords.REMEDY);
            list(
                    Texts.say("What to mend"),
                    refused.problems().stream().map(TakeInView::row).toList());
        }
    }

    private void showTakenIn(TakeInViewModel.TakenIn takenIn) {
        show(Buttons.primary(Texts.say("To the broods"), model::close));
        getChildren().add(banner(Tone.OK, takenIn.sentence()));
        list(
                Texts.say("Good to know"),
                takenIn.notices().stream()
                        .<Node>map(words -> Words.wrapped(Words.plain(TakeInWords.sentence(words))))
                        .toList());
    }

    /** The header; the last button is where the keeper's hands are put. */
    private void show(Button... actions) {
        getChildren().add(new PageHeader(Texts.say("Take in a brood folder"), actions));
        Button last = actions[actions.length - 1];
        last.sceneProperty().addListener((observed, before, now) -> {
            if (now != null) {
                last.requestFocus();
            }
        });
    }

    private void list(String title, List<Node> rows) {
        VBox lines = new VBox();
        lines.getStyleClass().add("lines");
        lines.getChildren().setAll(rows);
        Card card = Card.titled(title, new Scrolled(title, lines));
        setVgrow(card, Priority.SOMETIMES);
        getChildren().add(card);
    }

    private static Node row(FolderProblem problem) {
        Label place = Words.styled(TakeInWords.place(problem), "strong", "problem-place");
        Label what = Words.wrapped(Words.plain(TakeInWords.problem(problem)));
        HBox.setHgrow(what, Priority.ALWAYS);
        Flow row = new Flow(place, what);
        row.getStyleClass().add("problem-row");
        return row;
    }

    private static Banner banner(Tone tone, String sentence) {
        Banner banner = new Banner(tone);
        banner.sentenceProperty().set(sentence);
        return banner;
    }
}
