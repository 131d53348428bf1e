package org.moultwright.ui.broods;

import java.util.List;
import java.util.function.Function;
import javafx.beans.binding.DoubleBinding;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.TableCell;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.moultwright.language.Texts;
import org.moultwright.task.Once;
import org.moultwright.ui.control.Buttons;
import org.moultwright.ui.control.Em;
import org.moultwright.ui.control.Flow;
import org.moultwright.ui.control.Swatch;
import org.moultwright.ui.control.ToggleChip;
import org.moultwright.ui.control.WholeColumns;
import org.moultwright.ui.control.Words;

/** The story of the chosen brood, or the entries of its ledger in its place. */
final class StoryCard extends VBox {
    StoryCard(BroodsViewModel model) {
        Label title = Words.cardTitle("");
        title.textProperty()
                .bind(model.chosenProperty()
                        .map(line -> Texts.say(
                                "{0}, its story", line.map(BroodLine::code).orElse(""))));
        ToggleChip entries = new ToggleChip(Texts.say("ledger entries"));
        entries.getStyleClass().add("small-chip");
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        Button look = Buttons.secondary(Texts.say("Look closely"), model::look);
        look.getStyleClass().add("small-chip");
        look.setAccessibleText(Texts.say("look at the chosen brood closely"));
        Button timing = Buttons.secondary(Texts.say("Timing"), model::openTiming);
        timing.getStyleClass().add("small-chip");
        timing.setAccessibleText(Texts.say("timing of the chosen brood"));
        Button taken = Buttons.secondary(Texts.say("Taken from the mother"), model.forms()::pull);
        Button open = Buttons.secondary(Texts.say("Open the sac"), model.forms()::openUp);
        List.of(taken, open).forEach(button -> button.getStyleClass().add("small-chip"));
        model.chosenProperty().addListener((observed, before, now) -> offer(taken, open, model));
        offer(taken, open, model);
        Flow head = new Flow(title, gap, taken, open, look, timing, entries);
        head.getStyleClass().add("card-head");
        ListView<BroodStory.StoryLine> story = new ListView<>(model.account().story());
        story.getStyleClass().add("bare");
        story.setAccessibleText(Texts.say("story, newest first"));
        story.setCellFactory(list -> new StoryCell());
        Em type = new Em();
        // A table is the dearest of what stands here to style, and few look at it.
        Once<TableView<BroodLedger.EntryLine>> table = new Once<>(() -> table(model, type));
        StackPane both = new StackPane(story);
        entries.selectedProperty()
                .addListener((observed, before, chosen) -> both.getChildren().setAll(chosen ? table.get() : story));
        setVgrow(both, Priority.ALWAYS);
        getStyleClass().addAll("card", "story-card");
        getChildren().addAll(head, both, type);
    }

    /** What can be done with a sac is offered while one is chosen. */
    private static void offer(Button taken, Button open, BroodsViewModel model) {
        taken.setVisible(model.forms().isWithMother());
        taken.setManaged(model.forms().isWithMother());
        open.setVisible(model.forms().isSac());
        open.setManaged(model.forms().isSac());
    }

    private static TableView<BroodLedger.EntryLine> table(BroodsViewModel model, Em type) {
        TableView<BroodLedger.EntryLine> table = new TableView<>(model.account().entries());
        table.getStyleClass().add("bare");
        table.setAccessibleText(Texts.say("ledger entries, newest first"));
        table.getColumns().add(column(Texts.say("when"), type.times(7.333), BroodLedger.EntryLine::when));
        table.getColumns().add(column(Texts.say("from"), type.times(4.667), BroodLedger.EntryLine::from));
        table.getColumns().add(column(Texts.say("to"), type.times(5.333), BroodLedger.EntryLine::to));
        TableColumn<BroodLedger.EntryLine, String> count =
                column(Texts.say("animals"), type.times(4.667), BroodLedger.EntryLine::count);
        count.setCellFactory(shown -> new NumberCell());
        table.getColumns().add(count);
        table.getColumns().add(column(Texts.say("stage"), type.times(7.333), BroodLedger.EntryLine::stage));
        table.getColumns().add(column(Texts.say("cause"), type.times(8), BroodLedger.EntryLine::cause));
        table.getColumns().add(column("", type.times(8), BroodLedger.EntryLine::note));
        WholeColumns.of(table, type);
        return table;
    }

    private static TableColumn<BroodLedger.EntryLine, String> column(
            String title, DoubleBinding width, Function<BroodLedger.EntryLine, String> text) {
        TableColumn<BroodLedger.EntryLine, String> column = new TableColumn<>(title);
        column.setCellValueFactory(row -> new ReadOnlyStringWrapper(text.apply(row.getValue())));
        WholeColumns.atLeast(column, width);
        column.setSortable(false);
        column.setReorderable(false);
        return column;
    }

    private static final class NumberCell extends TableCell<BroodLedger.EntryLine, String> {
        NumberCell() {
            getStyleClass().add("number");
        }

        @Override
        protected void updateItem(String number, boolean empty) {
            super.updateItem(number, empty);
            setText(empty ? "" : number);
        }
    }

    private static final class StoryCell extends ListCell<BroodStory.StoryLine> {
        private final Label day = Words.styled("", "muted", "story-day");
        private final Label words = Words.wrapped(Words.plain(""));

        StoryCell() {
            setPrefWidth(0);
            HBox.setHgrow(words, Priority.ALWAYS);
            getStyleClass().add("story-cell");
        }

        @Override
        protected void updateItem(BroodStory.StoryLine line, boolean empty) {
            super.updateItem(line, empty);
            if (empty) {
                setGraphic(null);
                return;
            }
            day.setText(line.day());
            words.setText(line.words());
            Flow row = new Flow(day, Swatch.dot(line.dot()), words);
            row.getStyleClass().add("story-row");
            setGraphic(row);
            setAccessibleText(line.day() + ", " + line.words());
        }
    }
}
