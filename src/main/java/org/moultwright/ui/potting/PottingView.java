package org.moultwright.ui.potting;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
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
import org.moultwright.ui.control.Banner;
import org.moultwright.ui.control.Card;
import org.moultwright.ui.control.Columns;
import org.moultwright.ui.control.EmptyState;
import org.moultwright.ui.control.MadeInSight;
import org.moultwright.ui.control.PageHeader;
import org.moultwright.ui.control.Scrolled;
import org.moultwright.ui.control.Sign;
import org.moultwright.ui.control.Tone;
import org.moultwright.ui.label.SheetCard;
import org.moultwright.ui.shell.FootedPage;

/** Lays out the potting bench: taking, labels and outcome at the left, the sheet at the right, the balance beneath. */
final class PottingView extends VBox {
    static final KeyCombination SAVE = new KeyCodeCombination(KeyCode.S, KeyCombination.CONTROL_DOWN);
    static final KeyCombination PRINT = new KeyCodeCombination(KeyCode.P, KeyCombination.CONTROL_DOWN);
    static final KeyCombination DONE = new KeyCodeCombination(KeyCode.ENTER, KeyCombination.CONTROL_DOWN);

    static final KeyCombination OTHER_SIZE = new KeyCodeCombination(KeyCode.D, KeyCombination.CONTROL_DOWN);

    /** How high labels and outcome are, about, in sizes of text. */
    private static final double CARDS_BELOW_EMS = 40;

    private final PottingViewModel model;
    private final TakingCard takings;
    private final StackPane sheet = new StackPane();
    private final Map<SheetWay, SheetCard> sheets = new HashMap<>();

    PottingView(PottingViewModel model) {
        this.model = model;
        this.takings = new TakingCard(model);
        PageHeader header = new PageHeader(Texts.say("Potting"));
        header.subtitleProperty().bind(model.subtitleProperty());
        Columns bench = new Columns(left(), sheet);
        model.labels().shownProperty().addListener((observed, before, now) -> showSheet());
        showSheet();
        bench.getStyleClass().add("bench-columns");
        setVgrow(bench, Priority.ALWAYS);
        VBox page = new VBox(
                header,
                banner(Tone.OK, model.news().doneProperty()),
                banner(Tone.BAD, model.news().problemProperty()),
                empty(),
                bench);
        page.getStyleClass().addAll("page", "potting");
        Region foot = new BenchFoot(model);
        List.of(bench, foot).forEach(part -> {
            part.managedProperty().bind(model.onBench().benchProperty().map(open -> open.isPresent()));
            part.visibleProperty().bind(part.managedProperty());
        });
        FootedPage footed = new FootedPage(page, foot);
        setVgrow(footed, Priority.ALWAYS);
        getChildren().add(footed);
        addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
    }

    /** Puts the keeper's hands on the first number, which stands in the window once the page around it has its style. */
    void focusFirst() {
        applyCss();
        takings.focusFirst();
    }

    private void showSheet() {
        SheetWay way = model.labels().shownProperty().get();
        sheet.getChildren().setAll(sheets.computeIfAbsent(way, shown -> new SheetCard(shown.form(), shown.preview())));
    }

    private Scrolled left() {
        VBox cards = new VBox(takings);
        cards.getStyleClass().add("bench-left");
        Runnable rest = () -> {
            cards.getChildren().retainAll(takings);
            cards.getChildren().addAll(new LabelCard(model), new OutcomeCard(model));
        };
        if (takings.isLong()) {
            cards.getChildren().add(new MadeInSight(CARDS_BELOW_EMS, rest));
        } else {
            rest.run();
        }
        Scrolled left = new Scrolled(cards);
        left.getStyleClass().add("bench-cards");
        HBox.setHgrow(left, Priority.ALWAYS);
        return left;
    }

    private Node empty() {
        Card card = new Card();
        Runnable show = () -> card.getChildren()
                .setAll(new EmptyState(Sign.POTTING, model.emptyProperty().get()));
        model.emptyProperty().addListener((observed, before, now) -> show.run());
        show.run();
        setVgrow(card, Priority.ALWAYS);
        card.managedProperty().bind(model.emptyProperty().isNotEmpty());
        card.visibleProperty().bind(card.managedProperty());
        return card;
    }

    private static Banner banner(Tone tone, ObservableValue<String> sentence) {
        Banner banner = new Banner(tone);
        banner.sentenceProperty().bind(sentence);
        return banner;
    }

    private void turn(int by) {
        model.labels().shownProperty().get().preview().turn(by);
    }

    private void pressed(KeyEvent event) {
        if (SAVE.match(event)) {
            model.saveLabels();
        } else if (PRINT.match(event)) {
            model.printLabels();
        } else if (DONE.match(event)) {
            model.done();
        } else if (OTHER_SIZE.match(event)) {
            takings.addSize();
        } else if (event.getCode() == KeyCode.PAGE_DOWN) {
            turn(1);
        } else if (event.getCode() == KeyCode.PAGE_UP) {
            turn(-1);
        } else {
            return;
        }
        event.consume();
    }
}
