package org.moultwright.ui.intake;

import javafx.beans.property.ObjectProperty;
import javafx.beans.property.StringProperty;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.TextField;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.Banner;
import org.moultwright.ui.control.Buttons;
import org.moultwright.ui.control.Card;
import org.moultwright.ui.control.Flow;
import org.moultwright.ui.control.FormFoot;
import org.moultwright.ui.control.PageHeader;
import org.moultwright.ui.control.Tone;
import org.moultwright.ui.control.Words;

/** The page of an entry by hand: its fields, what is wrong with them, and what was kept. Enter keeps it. */
final class EntryForm extends VBox {
    private final GridPane grid = new GridPane();
    private int row;

    EntryForm(String title, String subtitle, EntryModel entry, Runnable keep, Runnable close) {
        Button primary = Buttons.primary(Texts.say("Keep"), keep);
        primary.setDefaultButton(true);
        PageHeader header = new PageHeader(title, Buttons.secondary(Texts.say("Back"), close));
        header.subtitleProperty().set(subtitle);
        Banner problem = new Banner(Tone.WARN);
        problem.sentenceProperty().bind(entry.problemProperty());
        Banner news = new Banner(Tone.OK);
        news.sentenceProperty().bind(entry.newsProperty());
        Button undo = Buttons.secondary(Texts.say("Undo"), entry::undo);
        undo.visibleProperty().bind(entry.undoableProperty());
        undo.managedProperty().bind(undo.visibleProperty());
        news.setActions(undo);
        grid.getStyleClass().add("form");
        ChoiceBox<String> where = new ChoiceBox<>(entry.containers());
        where.setMinWidth(Region.USE_PREF_SIZE);
        where.setAccessibleText(Texts.say("where the thermometer hangs"));
        where.valueProperty().bindBidirectional(entry.containerProperty());
        add(Texts.say("Where"), where);
        getStyleClass().add("page");
        getChildren().addAll(header, problem, news, new Card(grid), new FormFoot(primary));
    }

    EntryForm add(String word, Node... fields) {
        Flow line = new Flow(fields);
        line.getStyleClass().add("outcome-row");
        grid.addRow(row++, Words.plain(word), line);
        return this;
    }

    /** A note beneath the fields. */
    EntryForm note(String words) {
        grid.add(Words.wrapped(Words.caption(words)), 0, row++, 2, 1);
        return this;
    }

    static TextField field(String name, String example, StringProperty value) {
        TextField field = new TextField();
        field.setAccessibleText(name);
        field.setPromptText(example);
        field.getStyleClass().add("short-field");
        field.textProperty().bindBidirectional(value);
        return field;
    }

    /** A choice among values that say themselves in words. */
    static <T> ChoiceBox<T> choice(String name, Iterable<T> values, ObjectProperty<T> value) {
        ChoiceBox<T> choice = new ChoiceBox<>();
        choice.setMinWidth(Region.USE_PREF_SIZE);
        values.forEach(choice.getItems()::add);
        choice.setAccessibleText(name);
        choice.valueProperty().bindBidirectional(value);
        return choice;
    }
}
