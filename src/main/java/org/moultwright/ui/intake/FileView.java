package org.moultwright.ui.intake;

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
import org.moultwright.ui.control.FormFoot;
import org.moultwright.ui.control.PageHeader;
import org.moultwright.ui.control.Scrolled;
import org.moultwright.ui.control.Tone;
import org.moultwright.ui.control.Words;
import org.moultwright.workflow.ReadingFiles.Row;

/** Lays out a file of readings on its way in. */
final class FileView extends VBox {
    private final FileViewModel model;
    private final Runnable close;
    private final MappingPane mapping;

    FileView(FileViewModel model, IntakeDesk desk, Runnable close) {
        this.model = model;
        this.close = close;
        this.mapping = new MappingPane(model, desk.days());
        getStyleClass().add("page");
        model.stateProperty().addListener((observed, before, now) -> show());
        show();
    }

    void takeFocus() {
        mapping.takeFocus();
    }

    private void show() {
        getChildren().clear();
        FileViewModel.State state = model.stateProperty().get();
        if (state instanceof FileViewModel.Ended ended) {
            showEnded(ended);
        } else if (state instanceof FileViewModel.Running) {
            showRunning();
        } else {
            showMapping();
        }
    }

    private void showMapping() {
        Button take = Buttons.primary(Texts.say("Take in"), model::takeIn);
        take.setDefaultButton(true);
        head(Buttons.secondary(Texts.say("Back"), close));
        Banner problem = new Banner(Tone.WARN);
        problem.sentenceProperty().bind(model.entry().problemProperty());
        setVgrow(mapping, Priority.ALWAYS);
        getChildren().addAll(problem, mapping, new FormFoot(take));
        mapping.takeFocus();
    }

    private void showRunning() {
        ProgressBar bar = new ProgressBar();
        bar.setMaxWidth(Double.MAX_VALUE);
        bar.progressProperty().bind(model.shareProperty());
        bar.accessibleTextProperty().bind(model.progressProperty());
        Label words = Words.plain("");
        words.textProperty().bind(model.progressProperty());
        Button stop = Buttons.secondary(Texts.say("Stop"), model::cancel);
        head(stop);
        getChildren().add(new Card(words, bar, Words.caption(Texts.say("All of it is taken in, or nothing."))));
        stop.requestFocus();
    }

    private void showEnded(FileViewModel.Ended ended) {
        Button last = ended.isTakenIn()
                ? Buttons.primary(Texts.say("To the climate"), close)
                : Buttons.primary(Texts.say("Look at the columns again"), model::mapAgain);
        last.setDefaultButton(true);
        if (ended.isTakenIn()) {
            head(last);
        } else {
            head(Buttons.secondary(Texts.say("Back"), close), last);
        }
        Banner banner = new Banner(ended.isTakenIn() ? Tone.OK : Tone.BAD);
        banner.sentenceProperty().set(ended.sentence());
        getChildren().add(banner);
        if (!ended.listed().isEmpty()) {
            VBox lines = new VBox();
            lines.getStyleClass().add("lines");
            ended.listed().forEach(row -> lines.getChildren().add(line(row)));
            Card card = Card.titled(
                    Texts.say("Rows that are no reading"), new Scrolled(Texts.say("rows that are no reading"), lines));
            setVgrow(card, Priority.SOMETIMES);
            getChildren().add(card);
        }
        last.requestFocus();
    }

    private void head(Button... actions) {
        PageHeader header = new PageHeader(Texts.say("Readings from a file"), actions);
        header.subtitleProperty().set(model.fileName());
        getChildren().add(header);
    }

    private static Node line(Row row) {
        Label why = Words.wrapped(Words.plain(row.reason()));
        HBox.setHgrow(why, Priority.ALWAYS);
        Flow line = new Flow(Words.styled(Texts.say("line {0}", row.line()), "strong", "row-place"), why);
        line.getStyleClass().add("problem-row");
        return line;
    }
}
