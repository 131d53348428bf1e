package org.moultwright.ui.forecast;

import javafx.beans.binding.Bindings;
import javafx.beans.value.ObservableObjectValue;
import javafx.collections.ListChangeListener;
import javafx.collections.ObservableList;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.kordamp.ikonli.materialdesign2.MaterialDesignC;
import org.moultwright.ui.chart.CalendarList;
import org.moultwright.ui.chart.CalendarStrip;
import org.moultwright.ui.chart.LaneChart;
import org.moultwright.ui.control.Card;
import org.moultwright.ui.control.DayPicker;
import org.moultwright.ui.control.EmptyState;
import org.moultwright.ui.control.PageHeader;
import org.moultwright.ui.control.Scrolled;
import org.moultwright.ui.control.Swatch;
import org.moultwright.ui.control.Words;
import org.moultwright.ui.theme.Palette;

/** Lays out the forecast screen: the lanes, and beneath them the same in words. */
final class ForecastView extends VBox {
    private static final CalendarList.Rows ROWS = new CalendarList.Rows(82, 120);

    private final ForecastViewModel model;
    private final CalendarList<LaneLine> lanes;

    ForecastView(ForecastViewModel model, ObservableObjectValue<Palette> palette) {
        this.model = model;
        this.lanes = new CalendarList<>(
                "trays", model.lanes(), model.chosenProperty(), ROWS, () -> new LaneCell(model, palette));
        Node away = away();
        PageHeader header = new PageHeader("Forecast", away);
        header.subtitleProperty().bind(model.subtitleProperty());
        layLanes(palette);
        HBox below = new HBox(chosen(), yields(), lines("To do", model.toDo(), "todo-card"));
        below.getStyleClass().add("card-row");
        below.setMinHeight(226);
        below.setPrefHeight(226);
        Card empty = new Card(new EmptyState(
                MaterialDesignC.CHART_TIMELINE_VARIANT,
                "Nothing to foresee yet. Once a sac is opened and its trays are counted, their moults stand here."));
        setVgrow(lanes, Priority.ALWAYS);
        setVgrow(below, Priority.ALWAYS);
        getStyleClass().add("page");
        getChildren().addAll(header, lanes, below, empty);
        setVgrow(empty, Priority.ALWAYS);
        show(away, true);
        show(lanes, true);
        show(below, true);
        show(empty, false);
    }

    void takeFocus() {
        lanes.list().requestFocus();
    }

    private void show(Node part, boolean withLanes) {
        part.visibleProperty().bind(withLanes ? Bindings.isNotEmpty(model.lanes()) : Bindings.isEmpty(model.lanes()));
        part.managedProperty().bind(part.visibleProperty());
    }

    private Node away() {
        HBox row = new HBox(
                Words.muted("away from"),
                new DayPicker("first day away", model.awayFromProperty()),
                Words.muted("to"),
                new DayPicker("last day away", model.awayToProperty()));
        row.getStyleClass().add("page-actions");
        return row;
    }

    private void layLanes(ObservableObjectValue<Palette> palette) {
        CalendarStrip strip = new CalendarStrip(palette, model::nowWord, LaneChart.CALENDAR_LEFT_PIXELS);
        strip.calendarProperty().bind(model.calendarProperty());
        Region spacer = new Region();
        spacer.getStyleClass().addAll("row-facts", "lane-facts");
        HBox foot = new HBox(Words.caption(
                "bar = 80 % window · mark = its middle · square = has been · colour = the stage entered"));
        foot.getStyleClass().add("chart-foot");
        lanes.lay(spacer, strip, new Region(), foot);
    }

    private Node chosen() {
        VBox lines = new VBox();
        lines.getStyleClass().add("lines");
        Label title = Words.wrapped(Words.cardTitle(""));
        Runnable show = () -> {
            title.setText(model.chosenProperty().get().map(LaneLine::sentence).orElse(""));
            lines.getChildren().clear();
            model.chosenProperty()
                    .get()
                    .ifPresent(line -> line.latestFirst()
                            .forEach(windows -> lines.getChildren()
                                    .addAll(windows.lines().stream()
                                            .map(words -> row(Swatch.of(windows.into()), words))
                                            .toList())));
        };
        model.chosenProperty().addListener((observed, before, now) -> show.run());
        show.run();
        return grow(new Card(title, new Scrolled("windows of the chosen tray", lines)));
    }

    private static Node row(Node mark, String words) {
        HBox row = new HBox(mark, sentence(words));
        row.getStyleClass().add("line");
        return row;
    }

    private Node yields() {
        GridPane grid = new GridPane();
        grid.getStyleClass().add("form");
        Runnable show = () -> {
            grid.getChildren().clear();
            for (ForecastViewModel.YieldLine line : model.yields()) {
                grid.addRow(
                        grid.getRowCount(),
                        Words.plain(line.brood()),
                        Words.strong(line.count()),
                        Words.muted(line.of()));
            }
        };
        model.yields().addListener((ListChangeListener<ForecastViewModel.YieldLine>) change -> show.run());
        show.run();
        return grow(Card.titled("Yield", new Scrolled("yield of each brood", grid), Words.caption("80 % interval")));
    }

    private Node lines(String title, ObservableList<String> sentences, String styleClass) {
        VBox lines = new VBox();
        lines.getStyleClass().add("lines");
        Runnable show = () -> {
            lines.getChildren()
                    .setAll(sentences.stream().map(ForecastView::sentence).toList());
            lines.getChildren()
                    .addAll(model.notes().stream().map(ForecastView::note).toList());
        };
        sentences.addListener((ListChangeListener<String>) change -> show.run());
        model.notes().addListener((ListChangeListener<String>) change -> show.run());
        show.run();
        Card card = Card.titled(
                title,
                new Scrolled(title, lines),
                Words.wrapped(Words.caption("Slings left together eat each other: separating within a week is common"
                        + " practice, not a measured limit.")));
        card.getStyleClass().add(styleClass);
        return grow(card);
    }

    private static Node sentence(String words) {
        return Words.wrapped(Words.plain(words));
    }

    private static Node note(String words) {
        return Words.wrapped(Words.caption(words));
    }

    /** Three cards of one width. */
    private static Node grow(Card card) {
        card.setPrefWidth(1);
        HBox.setHgrow(card, Priority.ALWAYS);
        return card;
    }
}
