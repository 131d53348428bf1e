package org.moultwright.ui.broods;

import java.util.ArrayList;
import java.util.List;
import javafx.beans.value.ObservableValue;
import javafx.collections.ListChangeListener;
import javafx.collections.ObservableList;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.moultwright.language.Degrees;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.Banner;
import org.moultwright.ui.control.Buttons;
import org.moultwright.ui.control.Card;
import org.moultwright.ui.control.ChoiceGroup;
import org.moultwright.ui.control.Columns;
import org.moultwright.ui.control.EntryField;
import org.moultwright.ui.control.Flow;
import org.moultwright.ui.control.Focus;
import org.moultwright.ui.control.FormFoot;
import org.moultwright.ui.control.PageHeader;
import org.moultwright.ui.control.Scrolled;
import org.moultwright.ui.control.Swatch;
import org.moultwright.ui.control.ToggleChip;
import org.moultwright.ui.control.Tone;
import org.moultwright.ui.control.Typable;
import org.moultwright.ui.control.Words;

/** Lays out one brood's timing: what is believed, what the dates rest on, what was learned and from whom. */
final class TimingView extends VBox {
    private static final Typable NUMBER = Typable.number(4, 2);

    private final TimingViewModel model;
    private final List<EntryField> fields = new ArrayList<>();

    TimingView(TimingViewModel model) {
        this.model = model;
        Button keep = Buttons.primary(Texts.say("Keep what you believe"), model::keep);
        PageHeader header = new PageHeader(
                Texts.say("{0}, its timing", model.code()), Buttons.secondary(Texts.say("Back"), model::close));
        Banner problem = new Banner(Tone.BAD);
        problem.sentenceProperty().bind(model.problemProperty());
        Columns columns = Columns.even(believed(), basis(), taught());
        setVgrow(columns, Priority.ALWAYS);
        getStyleClass().add("page");
        getChildren().addAll(header, problem, columns, new FormFoot(keep));
        addEventHandler(KeyEvent.KEY_PRESSED, event -> {
            if (event.getCode() == KeyCode.ESCAPE) {
                model.close();
                event.consume();
            }
        });
    }

    void takeFocus() {
        TextField first = fields.get(0).input();
        Focus.on(first);
    }

    private Card believed() {
        GridPane grid = new GridPane();
        grid.getStyleClass().add("form");
        model.form()
                .medians()
                .forEach((stage, figure) -> grid.addRow(
                        grid.getRowCount(),
                        Swatch.of(stage),
                        Words.plain(model.stageWord(stage)),
                        field(figure, model.usual(stage)),
                        Words.caption(Texts.say("warm-days"))));
        BeliefForm form = model.form();
        grid.add(Words.plain(Texts.say("Broods differ by")), 0, grid.getRowCount(), 2, 1);
        grid.add(field(form.batchPercent(), model.usualPercent()), 2, grid.getRowCount() - 1);
        grid.add(Words.caption(Texts.say("% of an age")), 3, grid.getRowCount() - 1);
        GridPane limits = new GridPane();
        limits.getStyleClass().add("form");
        Runnable lay = () -> {
            limits.getChildren().clear();
            if (form.rateProperty().get() != BeliefForm.Rate.OTHER) {
                limits.addRow(
                        0,
                        Words.plain(Texts.say("None below")),
                        field(form.lower(), ""),
                        Words.caption(Degrees.symbol()));
            }
            if (form.rateProperty().get() == BeliefForm.Rate.CURVE) {
                limits.addRow(
                        1,
                        Words.plain(Texts.say("None above")),
                        field(form.upper(), ""),
                        Words.caption(Degrees.symbol()));
            }
        };
        form.rateProperty().addListener((observed, before, now) -> lay.run());
        lay.run();
        VBox words = lines(
                wrapped(model.believedProperty()),
                grid,
                Words.caption(Texts.say("development over temperature")),
                rates(form),
                limits,
                Buttons.plain(Texts.say("Believe nothing, use what is assumed"), model::believeNothing));
        return Card.titled(Texts.say("What you believe: half of them are"), new Scrolled(words));
    }

    private static Node rates(BeliefForm form) {
        Flow chips = new Flow();
        chips.getStyleClass().add("span-chips");
        ChoiceGroup<BeliefForm.Rate> group = new ChoiceGroup<>(form.rateProperty(), form.rateProperty()::set);
        for (BeliefForm.Rate rate : form.rates()) {
            ToggleChip chip = new ToggleChip(rate.words());
            chip.getStyleClass().add("small-chip");
            group.add(chip, rate);
            chips.getChildren().add(chip);
        }
        return chips;
    }

    private EntryField field(Figure figure, String usual) {
        EntryField field = new EntryField(figure.name(), NUMBER);
        field.getStyleClass().remove("big-entry");
        field.getStyleClass().add("short-field");
        field.input().setPromptText(usual);
        field.textProperty().bindBidirectional(figure.textProperty());
        field.problemProperty().bindBidirectional(figure.problemProperty());
        field.input().focusedProperty().addListener((observed, before, focused) -> {
            if (!focused) {
                figure.check();
            }
        });
        fields.add(field);
        return field;
    }

    private Card basis() {
        VBox words = lines(lines(model.basis(), false), lines(model.sources(), true));
        return Card.titled(
                Texts.say("What the dates rest on"), new Scrolled(Texts.say("what the dates rest on"), words));
    }

    private Card taught() {
        VBox teachers = lines();
        Runnable show = () -> teachers.getChildren()
                .setAll(model.teachers().stream().map(this::teacher).toList());
        model.teachers().addListener((ListChangeListener<TeacherLine>) change -> show.run());
        show.run();
        VBox words = lines(wrapped(model.taughtProperty()), lines(model.ages(), true), teachers);
        return Card.titled(Texts.say("What was learned"), new Scrolled(words));
    }

    private Node teacher(TeacherLine line) {
        Flow name = new Flow(Words.strong(line.code()), Words.muted(line.facts()));
        name.getStyleClass().add("lane-name");
        if (line.leftOut().isPresent()) {
            String reason = line.leftOut().get();
            return lines(
                    name,
                    Words.wrapped(Words.caption(
                            reason.isEmpty() ? Texts.say("left out") : Texts.say("left out: {0}", reason))),
                    Buttons.secondary(
                            Texts.say("Learn from {0} again", line.code()), () -> model.learnAgain(line.code())));
        }
        TextField reason = new TextField();
        reason.setAccessibleText(Texts.say("why {0} is left out, if you like", line.code()));
        reason.setPromptText(Texts.say("why, if you like"));
        HBox.setHgrow(reason, Priority.ALWAYS);
        Button leave = Buttons.secondary(Texts.say("Leave out"), () -> model.leaveOut(line.code(), reason.getText()));
        leave.setAccessibleText(Texts.say("leave {0} out of learning", line.code()));
        reason.setOnAction(event -> leave.fire());
        Flow row = new Flow(reason, leave);
        row.getStyleClass().add("page-actions");
        return lines(name, row);
    }

    private static VBox lines(Node... nodes) {
        VBox lines = new VBox(nodes);
        lines.getStyleClass().add("lines");
        return lines;
    }

    private static VBox lines(ObservableList<String> sentences, boolean areQuiet) {
        VBox lines = lines();
        Runnable show = () -> lines.getChildren()
                .setAll(sentences.stream()
                        .map(words -> Words.wrapped(areQuiet ? Words.caption(words) : Words.plain(words)))
                        .toList());
        sentences.addListener((ListChangeListener<String>) change -> show.run());
        show.run();
        return lines;
    }

    private static Node wrapped(ObservableValue<String> words) {
        Label label = Words.wrapped(Words.muted(""));
        label.textProperty().bind(words);
        return label;
    }
}
