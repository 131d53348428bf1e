package org.moultwright.ui.takealong;

import java.util.function.Function;
import javafx.beans.value.ObservableValue;
import javafx.collections.ListChangeListener;
import javafx.collections.ObservableList;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.moultwright.domain.label.Paper;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.Banner;
import org.moultwright.ui.control.Buttons;
import org.moultwright.ui.control.Card;
import org.moultwright.ui.control.ChoiceGroup;
import org.moultwright.ui.control.Columns;
import org.moultwright.ui.control.DayPicker;
import org.moultwright.ui.control.Flow;
import org.moultwright.ui.control.PageHeader;
import org.moultwright.ui.control.Scrolled;
import org.moultwright.ui.control.ToggleChip;
import org.moultwright.ui.control.Tone;
import org.moultwright.ui.control.Words;

/** Lays out what can be taken along: the sitter's sheet at the left, the calendar at the right. */
final class TakeAlongView extends VBox {
    private static final String SUBTITLE = Texts.say("as things are; a set-point tried on is left out");
    private static final String SHEET =
            Texts.say("One page for whoever looks after the trays: what to do each day, when to call, what "
                    + "never to do, and what to expect in each tray on those days.");
    private static final String CALENDAR =
            Texts.say("For any calendar program. Saved and taken in again, dates move; nothing stands there twice.");

    private final TakeAlongViewModel model;
    private final DayPicker from;

    TakeAlongView(TakeAlongViewModel model, SitterViewModel sitter, Runnable close) {
        this.model = model;
        this.from = new DayPicker(Texts.say("first day away"), model.plans().awayFromProperty());
        HandOver handOver = new HandOver(sitter, model);
        PageHeader header =
                new PageHeader(Texts.say("Take along"), handOver.button(), Buttons.secondary(Texts.say("Back"), close));
        header.subtitleProperty().set(SUBTITLE);
        Banner failure = new Banner(Tone.BAD);
        failure.sentenceProperty().bind(model.failureProperty().map(words -> words.orElse("")));
        Banner saved = new Banner(Tone.OK);
        saved.sentenceProperty().bind(model.savedProperty());
        Columns cards = new Columns(sheet(), calendar());
        cards.getStyleClass().addAll("what-if-columns", "take-along");
        cards.getChildren().forEach(card -> HBox.setHgrow(card, Priority.ALWAYS));
        setVgrow(cards, Priority.ALWAYS);
        getStyleClass().add("page");
        getChildren().addAll(header, handOver, failure, saved, cards);
    }

    void takeFocus() {
        from.takeFocus();
    }

    private Card sheet() {
        TextField phone = new TextField();
        phone.setAccessibleText(Texts.say("phone number the sitter calls"));
        phone.setPromptText(Texts.say("empty: a line to write it on"));
        phone.textProperty().bindBidirectional(model.phoneProperty());
        phone.focusedProperty().addListener((observed, before, focused) -> {
            if (!focused) {
                model.keepTyped();
            }
        });
        GridPane form = new GridPane();
        form.getStyleClass().add("form");
        Label away = Words.plain(Texts.say("Away"));
        away.getStyleClass().add("sac-word");
        GridPane.setValignment(away, VPos.TOP);
        form.addRow(
                0,
                away,
                row(
                        from,
                        Words.muted(Texts.say("to")),
                        new DayPicker(Texts.say("last day away"), model.plans().awayToProperty())));
        form.addRow(1, Words.plain(Texts.say("Call")), phone);
        form.addRow(2, Words.plain(Texts.say("Paper")), papers());
        Card card = Card.titled(
                Texts.say("Sitter's sheet"),
                Words.wrapped(Words.muted(SHEET)),
                form,
                new Scrolled(Texts.say("what the sheet says of each tray"), trays()),
                problem(model.sheetProblemProperty()),
                save(Texts.say("Save the sheet"), model::saveSheet, model.sheetProblemProperty()));
        card.setPrefWidth(0);
        return card;
    }

    private GridPane trays() {
        return rows(model.trays(), tray ->
                new Node[] {Words.strong(tray.code()), Words.wrapped(Words.plain(tray.expected()))});
    }

    private Node papers() {
        HBox chips = row();
        ChoiceGroup<Paper> group = new ChoiceGroup<>(model.paperProperty(), model.paperProperty()::set);
        for (Paper paper : Paper.values()) {
            ToggleChip chip = new ToggleChip(paper.title());
            group.add(chip, paper);
            chips.getChildren().add(chip);
        }
        return chips;
    }

    private Card calendar() {
        GridPane grid = rows(model.entries(), entry ->
                new Node[] {Words.strong(model.when(entry)), Words.wrapped(Words.plain(entry.title()))});
        Card card = Card.titled(
                Texts.say("Calendar"),
                Words.wrapped(Words.muted(CALENDAR)),
                new Scrolled(Texts.say("what stands in the calendar"), grid),
                problem(model.calendarProblemProperty()),
                save(Texts.say("Save the calendar"), model::saveCalendar, model.calendarProblemProperty()));
        card.setPrefWidth(0);
        return card;
    }

    /** A row for each, made anew whenever they change; what stands first in a row is never cut. */
    private static <T> GridPane rows(ObservableList<T> items, Function<T, Node[]> row) {
        GridPane grid = new GridPane();
        grid.getStyleClass().add("form");
        ColumnConstraints first = new ColumnConstraints();
        first.setMinWidth(Region.USE_PREF_SIZE);
        grid.getColumnConstraints().add(first);
        Runnable show = () -> {
            grid.getChildren().clear();
            for (int line = 0; line < items.size(); line++) {
                grid.addRow(line, row.apply(items.get(line)));
            }
            grid.getChildren().forEach(node -> GridPane.setValignment(node, VPos.TOP));
        };
        items.addListener((ListChangeListener<T>) change -> show.run());
        show.run();
        return grid;
    }

    private static Button save(String word, Runnable action, ObservableValue<String> problem) {
        Button button = Buttons.primary(word, action);
        button.disableProperty().bind(problem.map(words -> !words.isEmpty()));
        return button;
    }

    private static Label problem(ObservableValue<String> sentence) {
        Label label = Words.wrapped(Words.styled("", "problem"));
        label.textProperty().bind(sentence);
        label.managedProperty().bind(label.textProperty().isNotEmpty());
        return label;
    }

    private static HBox row(Node... nodes) {
        Flow row = new Flow(nodes);
        row.getStyleClass().add("outcome-row");
        return row;
    }
}
