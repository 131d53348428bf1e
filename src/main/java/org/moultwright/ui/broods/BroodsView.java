package org.moultwright.ui.broods;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import javafx.beans.binding.Bindings;
import javafx.beans.value.ObservableObjectValue;
import javafx.collections.ListChangeListener;
import javafx.scene.Node;
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
import org.moultwright.domain.Stage;
import org.moultwright.language.Texts;
import org.moultwright.ui.chart.CalendarList;
import org.moultwright.ui.chart.CalendarStrip;
import org.moultwright.ui.chart.LedgerBars;
import org.moultwright.ui.control.Banner;
import org.moultwright.ui.control.Card;
import org.moultwright.ui.control.Columns;
import org.moultwright.ui.control.Flow;
import org.moultwright.ui.control.PageHeader;
import org.moultwright.ui.control.StageChip;
import org.moultwright.ui.control.Swatch;
import org.moultwright.ui.control.Tone;
import org.moultwright.ui.control.Words;
import org.moultwright.ui.theme.Palette;

/** Lays out the broods screen: the ribbons, and beneath them the chosen brood's story and ledger. */
final class BroodsView extends StackPane {
    private static final CalendarList.Rows ROWS = new CalendarList.Rows(7.467, 16);
    private static final int DAYS_IN_A_LEAP = 7;
    private static final KeyCombination TIMING = new KeyCodeCombination(KeyCode.T, KeyCombination.SHORTCUT_DOWN);

    private final BroodsViewModel model;
    private final ObservableObjectValue<Palette> palette;
    private final CalendarList<BroodLine> ribbons;
    private final WaysInBar ways;
    private final Node page;

    /** Whether the keeper's hands are to be put on the broods as soon as there are any. */
    private boolean awaitsLines;

    BroodsView(BroodsViewModel model, ObservableObjectValue<Palette> palette) {
        this.model = model;
        this.palette = palette;
        this.ribbons = new CalendarList<>(
                Texts.say("broods"), model.lines(), model.chosenProperty(), ROWS, () -> new BroodCell(model, palette));
        this.ways = new WaysInBar(model);
        this.page = page(palette);
        getChildren().add(page);
        model.forms().openProperty().addListener((observed, before, now) -> show());
        model.timingProperty().addListener((observed, before, now) -> show());
        model.closelyProperty().addListener((observed, before, now) -> show());
        model.takeIn().stateProperty().addListener((observed, before, now) -> show());
        model.lines().addListener((ListChangeListener<BroodLine>) change -> {
            if (awaitsLines && !model.lines().isEmpty() && getChildren().contains(page)) {
                takeFocus();
            }
        });
        page.addEventFilter(KeyEvent.KEY_PRESSED, ways::pressed);
        page.addEventFilter(KeyEvent.KEY_PRESSED, event -> {
            if (TIMING.match(event)) {
                model.openTiming();
                event.consume();
            }
        });
    }

    /** Of what stands here now: the page, or what is open over it. */
    void takeFocus() {
        Node shown = getChildren().get(0);
        if (shown instanceof TimingView timing) {
            timing.takeFocus();
        } else if (shown instanceof SacFormView form) {
            form.takeFocus();
        } else if (shown instanceof BroodPageView brood) {
            brood.takeFocus();
        } else if (shown == page) {
            takeFocusOfPage();
        }
    }

    private void takeFocusOfPage() {
        awaitsLines = model.lines().isEmpty();
        if (awaitsLines) {
            ways.takeFocus();
        } else {
            ribbons.list().requestFocus();
        }
    }

    /** The page, or over it the form for a sac or the folder on its way in. */
    private void show() {
        boolean takesIn = !(model.takeIn().stateProperty().get() instanceof TakeInViewModel.Idle);
        Node shown = takesIn
                ? new TakeInView(model.takeIn())
                : model.forms()
                        .openProperty()
                        .get()
                        .<Node>map(BroodsView::form)
                        .or(() -> model.timingProperty().get().map(TimingView::new))
                        .or(() -> model.closelyProperty().get().map(brood -> new BroodPageView(brood, palette)))
                        .orElse(page);
        getChildren().setAll(shown);
        takeFocus();
    }

    private static SacFormView form(SacForm form) {
        if (form instanceof OpeningForm opening) {
            return new OpeningView(opening);
        }
        return form instanceof PullForm pull ? new PullView(pull) : new BeginView((BeginForm) form);
    }

    private Node page(ObservableObjectValue<Palette> palette) {
        HBox actions = ways.buttons();
        actions.getStyleClass().add("page-actions");
        show(actions, true);
        PageHeader header = new PageHeader(Texts.say("Broods"), actions);
        header.subtitleProperty().bind(model.subtitleProperty());
        Banner news = new Banner(Tone.OK);
        news.sentenceProperty().bind(model.takeIn().newsProperty());
        layRibbons(palette);
        Banner done = new Banner(Tone.OK);
        done.sentenceProperty().bind(model.deeds().doneProperty());
        Banner problem = new Banner(Tone.BAD);
        problem.sentenceProperty().bind(model.deeds().problemProperty());
        Columns below = new Columns(story(), ledger(palette));
        below.getStyleClass().addAll("card-row", "broods-below");
        VBox.setVgrow(ribbons, Priority.ALWAYS);
        VBox.setVgrow(below, Priority.ALWAYS);
        Card empty = new Card(ways.emptyState());
        VBox.setVgrow(empty, Priority.ALWAYS);
        VBox page = new VBox(header, news, done, problem, new BegunBanner(model.forms()), ribbons, below, empty);
        page.getStyleClass().add("page");
        show(empty, false);
        show(ribbons, true);
        show(below, true);
        return page;
    }

    /** Shows a part of the page only while there are broods, or only while there are none. */
    private void show(Node part, boolean withBroods) {
        part.visibleProperty().bind(withBroods ? Bindings.isNotEmpty(model.lines()) : Bindings.isEmpty(model.lines()));
        part.managedProperty().bind(part.visibleProperty());
    }

    private void layRibbons(ObservableObjectValue<Palette> palette) {
        CalendarStrip strip = new CalendarStrip(palette, model::nowWord, 0);
        strip.calendarProperty().bind(model.calendarProperty());
        ribbons.lay(spacer("brood-facts"), strip, spacer("brood-outcome"), foot());
        ribbons.list().addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
    }

    private void pressed(KeyEvent event) {
        int days =
                switch (event.getCode()) {
                    case LEFT, KP_LEFT -> -1;
                    case RIGHT, KP_RIGHT -> 1;
                    default -> 0;
                };
        if (days != 0) {
            model.step(event.isShiftDown() ? days * DAYS_IN_A_LEAP : days);
            event.consume();
        } else if (event.getCode() == KeyCode.ENTER && !event.isShortcutDown()) {
            model.look();
            event.consume();
        } else if (event.getCode() == KeyCode.O && !event.isShortcutDown()) {
            model.forms().openUp();
            event.consume();
        } else if (event.getCode() == KeyCode.P && !event.isShortcutDown()) {
            model.forms().pull();
            event.consume();
        }
    }

    private Node foot() {
        Flow legend = new Flow(chips());
        legend.getStyleClass().add("legend-row");
        model.vocabularyProperty()
                .addListener((observed, before, now) -> legend.getChildren().setAll(chips()));
        Label words = Words.caption("");
        words.textProperty()
                .bind(model.readingWordsProperty()
                        .map(day ->
                                day.isEmpty() ? Texts.say("{0} · ← → read a day", BroodCharts.EXPECTED_WORDS) : day));
        Flow foot = new Flow(legend, words);
        foot.getStyleClass().add("chart-foot");
        return foot;
    }

    private StageChip[] chips() {
        List<StageChip> chips = new ArrayList<>();
        Arrays.stream(Stage.values())
                .map(stage ->
                        new StageChip(stage, model.vocabularyProperty().get().label(stage)))
                .forEach(chips::add);
        chips.add(new StageChip(Swatch.potted(), Texts.say("Potted")));
        chips.add(new StageChip(Swatch.dead(), Texts.say("Dead")));
        return chips.toArray(StageChip[]::new);
    }

    private Node story() {
        StoryCard card = new StoryCard(model);
        HBox.setHgrow(card, Priority.ALWAYS);
        return card;
    }

    private Node ledger(ObservableObjectValue<Palette> palette) {
        Label title = Words.cardTitle("");
        title.textProperty().bind(model.account().titleProperty());
        LedgerBars bars = new LedgerBars(palette);
        Bindings.bindContent(bars.bars(), model.account().bars());
        Label note = Words.wrapped(Words.caption(""));
        note.textProperty().bind(model.account().noteProperty());
        Card card = new Card(title, bars, note);
        card.getStyleClass().add("ledger-card");
        return card;
    }

    private static Region spacer(String styleClass) {
        Region spacer = new Region();
        spacer.getStyleClass().addAll("row-facts", styleClass);
        return spacer;
    }
}
