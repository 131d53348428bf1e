package org.moultwright.ui.instrument;

import java.util.List;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.value.ObservableObjectValue;
import javafx.scene.Node;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.moultwright.compute.agreement.DisplayCheck;
import org.moultwright.language.Degrees;
import org.moultwright.language.Texts;
import org.moultwright.ui.chart.AgreementChart;
import org.moultwright.ui.control.Banner;
import org.moultwright.ui.control.Buttons;
import org.moultwright.ui.control.Card;
import org.moultwright.ui.control.ChoiceGroup;
import org.moultwright.ui.control.Columns;
import org.moultwright.ui.control.PageHeader;
import org.moultwright.ui.control.ToggleChip;
import org.moultwright.ui.control.Tone;
import org.moultwright.ui.control.Words;
import org.moultwright.ui.theme.Palette;

/** Lays out the page on which a display is held against a probe: entry and verdict left, all pairs right. */
public final class DisplayView extends VBox {
    private static final int PAIRS_LISTED = 6;

    private final DisplayViewModel model;
    private final MeasuredField celsius;
    private final Label headline = Words.wrapped(Words.styled("", "verdict"));
    private final Label arithmetic = Words.wrapped(Words.plain(""));
    private final Label remedy = Words.wrapped(Words.strong(""));
    private final AgreementChart chart;
    private final Label together = Words.wrapped(Words.plain(""));
    private final VBox list = new VBox();

    public DisplayView(DisplayViewModel model, ObservableObjectValue<Palette> palette) {
        this.model = model;
        this.celsius = new MeasuredField(model.celsius());
        this.chart = new AgreementChart(palette);
        celsius.input().setOnAction(event -> model.keep());
        PageHeader header =
                new PageHeader(Texts.say("Display against probe"), Buttons.secondary(Texts.say("Back"), model::cancel));
        header.subtitleProperty().set(Texts.say("what an incubator shows, beside what the probe there measured"));
        Banner problem = new Banner(Tone.BAD);
        problem.sentenceProperty().bind(model.problemProperty());
        VBox left = new VBox(entry(), verdict());
        left.getStyleClass().addAll("lines", "display-left");
        VBox.setVgrow(chart, Priority.ALWAYS);
        Label told = Words.wrapped(Words.caption(""));
        told.textProperty().bind(model.toldProperty());
        told.managedProperty().bind(told.textProperty().isNotEmpty());
        Card right = Card.titled(Texts.say("All pairs"), together, chart, list, told);
        HBox.setHgrow(right, Priority.ALWAYS);
        Columns columns = new Columns(left, right);
        columns.getStyleClass().add("card-row");
        VBox.setVgrow(columns, Priority.ALWAYS);
        getStyleClass().add("page");
        getChildren().addAll(header, problem, columns);
        model.pairsProperty().addListener((observed, before, now) -> show());
        model.toleranceCelsiusProperty().addListener((observed, before, now) -> show());
        show();
    }

    public void takeFocus() {
        celsius.input().requestFocus();
    }

    private Node entry() {
        ChoiceBox<String> container = new ChoiceBox<>();
        container.setMinWidth(Region.USE_PREF_SIZE);
        container.getItems().setAll(model.containers());
        container.setAccessibleText(Texts.say("container whose display it is"));
        container.valueProperty().bindBidirectional(model.containerProperty());
        TextField note = new TextField();
        note.setAccessibleText(Texts.say("note"));
        note.textProperty().bindBidirectional(model.noteProperty());
        GridPane grid = new GridPane();
        grid.getStyleClass().add("form");
        grid.addRow(0, Words.whole(Words.plain(Texts.say("Display of"))), container);
        grid.addRow(1, Words.whole(Words.plain(Texts.say("It shows, {0}", Degrees.symbol()))), celsius);
        grid.addRow(
                2,
                Words.whole(Words.plain(Texts.say("Last digit counts"))),
                chips(model.stepCelsiusProperty(), "", List.of(0.1, 0.5, 1.0)));
        grid.addRow(
                3,
                Words.plain(Texts.say("The probe lies")),
                chips(model.positionSdCelsiusProperty(), "± ", List.of(0.1, 0.2, 0.5)));
        grid.addRow(
                4,
                Words.whole(Words.plain(Texts.say("You accept"))),
                chips(model.toleranceCelsiusProperty(), "", List.of(0.3, 0.5, 1.0)));
        grid.addRow(5, Words.whole(Words.plain(Texts.say("Note"))), note);
        return Card.titled(
                Texts.say("Read it off now"),
                grid,
                Words.wrapped(Words.caption(Texts.say(
                        "Place: ± 0.1 beside the display's sensor, ± 0.2 in the same box, ± 0.5 elsewhere (common "
                                + "practice, no source)."))),
                Buttons.primary(Texts.say("Write it down"), model::keep));
    }

    private Node verdict() {
        Card card = Card.titled(Texts.say("The latest"), headline, arithmetic, remedy);
        VBox.setVgrow(card, Priority.ALWAYS);
        return card;
    }

    private static FlowPane chips(ObjectProperty<Double> chosen, String prefix, List<Double> all) {
        FlowPane pane = new FlowPane();
        pane.getStyleClass().addAll("chips", "tight");
        ChoiceGroup<Double> group = new ChoiceGroup<>(chosen, chosen::set);
        for (double each : all) {
            ToggleChip chip = new ToggleChip(prefix + Degrees.apartWords(each, 1));
            group.add(chip, each);
            pane.getChildren().add(chip);
        }
        return pane;
    }

    private void show() {
        List<DisplayPair> pairs = model.pairsProperty().get();
        Optional<DisplayPair> latest = pairs.stream().findFirst();
        headline.setText(latest.map(pair -> DisplayWords.headline(model.judge(pair.check())))
                .orElse(Texts.say("Nothing read off yet.")));
        Words.restyle(
                headline,
                "verdict",
                latest.map(pair -> tone(model.judge(pair.check())))
                        .orElse(Tone.MUTED)
                        .styleClass());
        arithmetic.setText(latest.map(pair -> DisplayWords.arithmetic(pair.check(), model.judge(pair.check())))
                .orElse(Texts.say(
                        "Read the display, write its number above, and it is held against the probe at once.")));
        remedy.setText(latest.map(pair -> DisplayWords.remedy(model.judge(pair.check()), model.wantedCelsius()))
                .orElse(""));
        together.setText(DisplayWords.together(pairs, model.limits())
                + model.creep()
                        .map(found -> " "
                                + DisplayWords.creep(
                                        found, model.day(found.since().note())))
                        .orElse(""));
        chart.shownProperty()
                .set(Optional.of(new AgreementChart.Shown(
                        pairs.stream().map(pair -> point(pair.check())).toList(), model.limits())));
        list.getChildren()
                .setAll(pairs.stream()
                        .limit(PAIRS_LISTED)
                        .map(pair -> Words.caption(line(pair)))
                        .toList());
    }

    private String line(DisplayPair pair) {
        String words = Texts.say(
                "{0}: {1} shown, {2} measured. {3}",
                model.when(pair.note()),
                Degrees.number(pair.check().displayCelsius(), 1),
                Degrees.number(pair.check().probeCelsius(), 1),
                DisplayWords.headline(model.judge(pair.check())));
        return pair.note().note().isEmpty() ? words : words + ". " + pair.note().note();
    }

    private static AgreementChart.Pair point(DisplayCheck check) {
        return new AgreementChart.Pair((check.displayCelsius() + check.probeCelsius()) / 2, check.difference());
    }

    private static Tone tone(DisplayCheck.Judgement judged) {
        return switch (judged.verdict()) {
            case AGREES -> Tone.OK;
            case DISAGREES -> Tone.WARN;
            case CANNOT_TELL -> Tone.MUTED;
        };
    }
}
