package org.moultwright.ui.forecast;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import javafx.beans.binding.Bindings;
import javafx.beans.value.ObservableObjectValue;
import javafx.css.PseudoClass;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.moultwright.language.Texts;
import org.moultwright.ui.chart.CalendarList;
import org.moultwright.ui.chart.CalendarStrip;
import org.moultwright.ui.chart.LaneChart;
import org.moultwright.ui.control.Buttons;
import org.moultwright.ui.control.Card;
import org.moultwright.ui.control.ChoiceGroup;
import org.moultwright.ui.control.DayPicker;
import org.moultwright.ui.control.EmptyState;
import org.moultwright.ui.control.Flow;
import org.moultwright.ui.control.PageHeader;
import org.moultwright.ui.control.Sign;
import org.moultwright.ui.control.ToggleChip;
import org.moultwright.ui.control.Words;
import org.moultwright.ui.theme.Palette;

/** Lays out the forecast screen: the lanes, and beneath them the same in words. */
final class ForecastView extends StackPane {
    private static final CalendarList.Rows ROWS = new CalendarList.Rows(4.6, 8);

    private static final String HOW_GOOD = Texts.say("How good were the dates");
    private static final KeyCombination ACCURACY = new KeyCodeCombination(KeyCode.G, KeyCombination.SHORTCUT_DOWN);
    private static final PseudoClass WHAT_IF = PseudoClass.getPseudoClass("what-if");
    private static final String KEY =
            Texts.say("bar = 80 % · mark = middle · square = has been · colour = stage entered");
    private static final String WHAT_IF_KEY = Texts.say("bar = what if · outline = as it is · mark = the middle");

    private final ForecastViewModel model;
    private final CalendarList<LaneLine> lanes;

    ForecastView(ForecastViewModel model, ObservableObjectValue<Palette> palette, Node... tools) {
        this.model = model;
        this.lanes = new CalendarList<>(
                Texts.say("trays"), model.lanes(), model.chosenProperty(), ROWS, () -> new LaneCell(model, palette));
        Node away = away();
        PageHeader header = new PageHeader(Texts.say("Forecast"), away);
        header.subtitleProperty().bind(model.subtitleProperty());
        layLanes(palette, tools);
        Node below = below();
        markWhatIf(header, lanes, below);
        Card empty = new Card(new EmptyState(
                Sign.FORECAST,
                Texts.say(
                        "Nothing to foresee yet. Once a sac is opened and its trays are counted, their moults stand here."),
                Buttons.secondary(HOW_GOOD, model::openAccuracy)));
        VBox.setVgrow(lanes, Priority.ALWAYS);
        VBox.setVgrow(below, Priority.SOMETIMES);
        VBox page = new VBox(header, lanes, below, empty);
        page.getStyleClass().add("page");
        getChildren().add(page);
        page.addEventFilter(KeyEvent.KEY_PRESSED, event -> {
            if (ACCURACY.match(event)) {
                model.openAccuracy();
                event.consume();
            }
        });
        model.accuracyProperty().addListener((observed, before, now) -> {
            Optional<AccuracyView> accuracy = now.map(opened -> new AccuracyView(opened, palette));
            getChildren().setAll(accuracy.<Node>map(view -> view).orElse(page));
            accuracy.ifPresentOrElse(AccuracyView::takeFocus, this::takeFocus);
        });
        VBox.setVgrow(empty, Priority.ALWAYS);
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
        Flow row = new Flow(
                Words.muted(Texts.say("away from")),
                new DayPicker(Texts.say("first day away"), model.away().fromProperty()),
                Words.muted(Texts.say("to")),
                new DayPicker(Texts.say("last day away"), model.away().toProperty()));
        row.getStyleClass().add("page-actions");
        return row;
    }

    private void layLanes(ObservableObjectValue<Palette> palette, Node... tools) {
        CalendarStrip strip = new CalendarStrip(palette, model::nowWord, LaneChart.CALENDAR_LEFT_EMS);
        strip.calendarProperty().bind(model.calendarProperty());
        strip.absenceProperty().bind(model.away().absenceProperty());
        Region spacer = new Region();
        spacer.getStyleClass().addAll("row-facts", "lane-facts");
        Label key = Words.caption(KEY);
        model.whatIf()
                .answerProperty()
                .addListener((observed, before, now) -> key.setText(now.isPresent() ? WHAT_IF_KEY : KEY));
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        Button accuracy = Buttons.secondary(HOW_GOOD, model::openAccuracy);
        accuracy.getStyleClass().add("small-chip");
        Flow foot = new Flow(key, gap, accuracy, parts());
        foot.getStyleClass().add("chart-foot");
        foot.getChildren().addAll(tools);
        lanes.lay(spacer, strip, new Region(), foot);
    }

    /** Beside the key to the lanes, the choice of what stands beneath them. */
    private Node parts() {
        Flow chips = new Flow();
        chips.getStyleClass().add("span-chips");
        ChoiceGroup<ForecastViewModel.Part> group = new ChoiceGroup<>(model.partProperty(), model.partProperty()::set);
        for (ForecastViewModel.Part part : ForecastViewModel.Part.values()) {
            ToggleChip chip = new ToggleChip(part.word());
            chip.getStyleClass().add("small-chip");
            group.add(chip, part);
            chips.getChildren().add(chip);
        }
        return chips;
    }

    /** Only the part chosen stands there, and each is made when it is first chosen: in a full room they are long. */
    private Node below() {
        StackPane below = new StackPane();
        Map<ForecastViewModel.Part, Node> made = new EnumMap<>(ForecastViewModel.Part.class);
        model.partProperty().subscribe(part -> below.getChildren().setAll(made.computeIfAbsent(part, this::part)));
        below.getStyleClass().add("below-lanes");
        return below;
    }

    private Node part(ForecastViewModel.Part part) {
        return switch (part) {
            case AHEAD -> PlanAhead.of(model);
            case ORDERS -> OrdersCard.of(model.orders());
            case WORDS -> InWords.of(model);
        };
    }

    /** A what-if is marked wherever its dates stand, so that nobody takes it for the forecast. */
    private void markWhatIf(Node... marked) {
        model.whatIf().answerProperty().addListener((observed, before, now) -> {
            for (Node node : marked) {
                node.pseudoClassStateChanged(WHAT_IF, now.isPresent());
            }
        });
    }
}
