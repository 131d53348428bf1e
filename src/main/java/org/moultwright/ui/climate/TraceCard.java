package org.moultwright.ui.climate;

import javafx.beans.value.ObservableObjectValue;
import javafx.collections.ListChangeListener;
import javafx.scene.Node;
import javafx.scene.SnapshotParameters;
import javafx.scene.control.Button;
import javafx.scene.control.CheckMenuItem;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.scene.paint.Color;
import javafx.scene.transform.Transform;
import org.moultwright.language.Texts;
import org.moultwright.ui.chart.Trace;
import org.moultwright.ui.chart.TraceChart;
import org.moultwright.ui.control.Buttons;
import org.moultwright.ui.control.ChoiceGroup;
import org.moultwright.ui.control.Flow;
import org.moultwright.ui.control.ToggleChip;
import org.moultwright.ui.control.Words;
import org.moultwright.ui.theme.Palette;

/** The trace with what can be done to it above, and what the air is now beside it. */
final class TraceCard extends Flow {
    private final ClimateViewModel model;
    private final TraceChart chart;
    private final Label words = Words.caption("");
    private final Label done = Words.caption("");

    TraceCard(ClimateViewModel model, ObservableObjectValue<Palette> palette) {
        this.model = model;
        this.chart = new TraceChart(palette);
        bindChart();
        words.textProperty().bind(model.readingWordsProperty());
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        Flow foot = new Flow(words, gap, done);
        VBox plot = new VBox(tools(), chart, foot);
        plot.getStyleClass().add("trace-plot");
        VBox.setVgrow(chart, Priority.ALWAYS);
        setHgrow(plot, Priority.ALWAYS);
        getStyleClass().addAll("card", "trace-card");
        getChildren().addAll(plot, new NowPane(model));
    }

    void takeFocus() {
        chart.requestFocus();
    }

    /** Puts a picture of the trace on the clipboard, twice as fine as on screen. */
    void copy() {
        SnapshotParameters twice = new SnapshotParameters();
        twice.setTransform(Transform.scale(2, 2));
        twice.setFill(Color.TRANSPARENT);
        ClipboardContent content = new ClipboardContent();
        content.putImage(chart.snapshot(twice, null));
        done.setText(
                Clipboard.getSystemClipboard().setContent(content)
                        ? Texts.say("Picture copied.")
                        : Texts.say("Nothing could be copied."));
    }

    void print() {
        done.setText(model.print());
    }

    private void save() {
        model.save(done::setText);
    }

    private void bindChart() {
        chart.traceProperty().bind(model.traceProperty());
        chart.wantedProperty().addListener((observed, before, now) -> now.ifPresent(model::look));
        model.readingProperty()
                .addListener((observed, before, now) -> chart.readingProperty().set(now));
        chart.readingProperty()
                .addListener((observed, before, now) -> model.readingProperty().set(now));
        chart.accessibleTextProperty()
                .bind(model.readingWordsProperty()
                        .map(said -> said.isEmpty() ? Texts.say("temperature over time") : said));
    }

    private Node tools() {
        Flow tools = new Flow();
        tools.getStyleClass().add("trace-tools");
        ChoiceGroup<TimeSpan> group = new ChoiceGroup<>(model.spanProperty(), model.spanProperty()::set);
        for (TimeSpan span : TimeSpan.OFFERED) {
            ToggleChip chip = small(new ToggleChip(span.word()));
            group.add(chip, span);
            tools.getChildren().add(chip);
        }
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        ToggleChip hold = small(new ToggleChip(Texts.say("Hold")));
        hold.selectedProperty().bindBidirectional(model.heldProperty());
        tools.getChildren()
                .addAll(
                        gap,
                        compare(),
                        hold,
                        tool(Texts.say("Copy"), this::copy),
                        tool(Texts.say("Print"), this::print),
                        tool("PDF", this::save));
        return tools;
    }

    private MenuButton compare() {
        MenuButton menu = new MenuButton(Texts.say("Compare"));
        menu.setAccessibleText(Texts.say("compare with other probes"));
        menu.getStyleClass().add("small-button");
        menu.setMinWidth(USE_PREF_SIZE);
        Runnable offer = () -> {
            menu.getItems()
                    .setAll(model.probes().stream()
                            .map(ProbeRow::probe)
                            .filter(probe ->
                                    !probe.equals(model.chosenProperty().get()))
                            .map(this::item)
                            .toList());
            menu.setDisable(menu.getItems().isEmpty());
        };
        model.probes().addListener((ListChangeListener<ProbeRow>) change -> offer.run());
        model.chosenProperty().addListener((observed, before, now) -> offer.run());
        model.compared().addListener((ListChangeListener<String>) change -> offer.run());
        offer.run();
        return menu;
    }

    private CheckMenuItem item(String probe) {
        CheckMenuItem item = new CheckMenuItem(probe);
        boolean isOn = model.compared().contains(probe);
        item.setSelected(isOn);
        item.setDisable(!isOn && model.compared().size() >= Trace.MOST_OTHERS);
        item.setOnAction(event -> {
            if (isOn) {
                model.compared().remove(probe);
            } else {
                model.compared().add(probe);
            }
        });
        return item;
    }

    private static Button tool(String word, Runnable deed) {
        Button button = Buttons.secondary(word, deed);
        button.getStyleClass().add("small-button");
        return button;
    }

    private static ToggleChip small(ToggleChip chip) {
        chip.getStyleClass().add("small-chip");
        return chip;
    }
}
