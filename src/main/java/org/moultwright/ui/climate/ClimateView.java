package org.moultwright.ui.climate;

import javafx.animation.Animation;
import javafx.animation.KeyFrame;
import javafx.animation.Timeline;
import javafx.beans.binding.Bindings;
import javafx.beans.value.ObservableObjectValue;
import javafx.collections.ListChangeListener;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.util.Duration;
import org.kordamp.ikonli.materialdesign2.MaterialDesignT;
import org.moultwright.ui.chart.TraceChart;
import org.moultwright.ui.control.Banner;
import org.moultwright.ui.control.Buttons;
import org.moultwright.ui.control.Card;
import org.moultwright.ui.control.ChoiceGroup;
import org.moultwright.ui.control.EmptyState;
import org.moultwright.ui.control.PageHeader;
import org.moultwright.ui.control.ToggleChip;
import org.moultwright.ui.control.Tone;
import org.moultwright.ui.control.Words;
import org.moultwright.ui.theme.Palette;

/** Lays out the climate screen: one trace large, its last reading beside it, all probes beneath. */
final class ClimateView extends VBox {
    private static final Duration AGEING = Duration.seconds(5);

    private final ClimateViewModel model;
    private final TraceChart chart;
    private final ListView<ProbeRow> probes;
    private final StackPane side = new StackPane();
    private final Timeline ageing;

    ClimateView(ClimateViewModel model, ObservableObjectValue<Palette> palette, Node writeIn) {
        this.model = model;
        this.chart = new TraceChart(palette);
        this.probes = new ListView<>(model.probes());
        this.ageing = new Timeline(new KeyFrame(AGEING, event -> model.age()));
        ageing.setCycleCount(Animation.INDEFINITE);
        sceneProperty().addListener((observed, before, now) -> {
            if (now == null) {
                ageing.stop();
            } else {
                ageing.play();
            }
        });
        HBox actions = new HBox(spans(), Buttons.secondary("Connect a probe", this::connect));
        actions.getStyleClass().add("page-actions");
        show(actions, true);
        PageHeader header = new PageHeader("Climate", actions, writeIn);
        header.subtitleProperty().bind(model.subtitleProperty());
        Banner problem = new Banner(Tone.WARN);
        problem.sentenceProperty().bind(model.problemProperty());
        Node trace = trace();
        Node list = list();
        Card empty = new Card(new EmptyState(
                MaterialDesignT.THERMOMETER,
                "No probe has been heard yet. Connect one on a serial line, write in what a thermometer shows,"
                        + " or take in a brood with its readings.",
                Buttons.primary("Connect a probe", this::connect)));
        show(trace, true);
        show(empty, false);
        setVgrow(empty, Priority.ALWAYS);
        Node journal = new JournalCard(model.journal());
        HBox below = new HBox(list, journal, side);
        journal.visibleProperty().bind(list.visibleProperty().and(Bindings.isEmpty(side.getChildren())));
        journal.managedProperty().bind(journal.visibleProperty());
        below.getStyleClass().add("card-row");
        HBox.setHgrow(list, Priority.ALWAYS);
        side.managedProperty().bind(Bindings.isNotEmpty(side.getChildren()));
        show(list, true);
        setVgrow(trace, Priority.ALWAYS);
        below.managedProperty().bind(list.visibleProperty().or(side.managedProperty()));
        below.setMinHeight(214);
        below.setPrefHeight(214);
        getStyleClass().add("page");
        getChildren().addAll(header, problem, trace, empty, below);
    }

    void takeFocus() {
        chart.requestFocus();
    }

    private void show(Node part, boolean withProbes) {
        part.visibleProperty()
                .bind(withProbes ? Bindings.isNotEmpty(model.probes()) : Bindings.isEmpty(model.probes()));
        part.managedProperty().bind(part.visibleProperty());
    }

    private Node spans() {
        HBox chips = new HBox();
        chips.getStyleClass().add("span-chips");
        ChoiceGroup<TimeSpan> group = new ChoiceGroup<>(model.spanProperty(), model.spanProperty()::set);
        for (TimeSpan span : TimeSpan.values()) {
            ToggleChip chip = new ToggleChip(span.word());
            group.add(chip, span);
            chips.getChildren().add(chip);
        }
        return chips;
    }

    private Node trace() {
        chart.traceProperty().bind(model.traceProperty());
        chart.widthProperty()
                .addListener((observed, before, now) -> model.pixelsProperty().set(Math.max(1, now.doubleValue())));
        model.readingProperty()
                .addListener((observed, before, now) -> chart.readingProperty().set(now));
        chart.readingProperty()
                .addListener((observed, before, now) -> model.readingProperty().set(now));
        chart.accessibleTextProperty()
                .bind(model.readingWordsProperty().map(words -> words.isEmpty() ? "temperature over time" : words));
        Label words = Words.caption("");
        words.textProperty().bind(model.readingWordsProperty());
        VBox plot = new VBox(chart, words);
        VBox.setVgrow(chart, Priority.ALWAYS);
        HBox.setHgrow(plot, Priority.ALWAYS);
        HBox card = new HBox(plot, now());
        card.getStyleClass().addAll("card", "trace-card");
        return card;
    }

    private Node now() {
        Label celsius = Words.styled("", "reading");
        Label age = Words.wrapped(Words.muted(""));
        Label air = Words.wrapped(Words.plain(""));
        Runnable show = () -> {
            ProbeNow now = model.nowProperty().get();
            celsius.setText(now.celsius());
            celsius.setOpacity(now.isStale() ? 0.55 : 1);
            age.setText(now.age());
            air.setText(now.air());
        };
        model.nowProperty().addListener((observed, before, after) -> show.run());
        show.run();
        VBox now = new VBox(Words.muted("now"), celsius, age, air);
        now.getStyleClass().add("probe-now");
        return now;
    }

    private Node list() {
        probes.getStyleClass().add("bare");
        probes.setAccessibleText("probes");
        probes.setCellFactory(shown -> new ProbeCell(model));
        probes.getSelectionModel().selectedItemProperty().addListener((observed, before, now) -> {
            if (now != null) {
                model.chosenProperty().set(now.probe());
            }
        });
        model.chosenProperty().addListener((observed, before, now) -> select());
        model.probes().addListener((ListChangeListener<ProbeRow>) change -> select());
        select();
        VBox.setVgrow(probes, Priority.ALWAYS);
        return Card.titled("Probes", probes);
    }

    private void select() {
        String chosen = model.chosenProperty().get();
        model.probes().stream()
                .filter(row -> row.probe().equals(chosen))
                .findFirst()
                .ifPresent(row -> probes.getSelectionModel().select(row));
    }

    private void connect() {
        ConnectCard form = new ConnectCard(model, () -> {
            side.getChildren().clear();
            takeFocus();
        });
        side.getChildren().setAll(form);
        form.takeFocus();
    }
}
