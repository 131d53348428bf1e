package org.moultwright.ui.broods;

import java.util.stream.Stream;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.Buttons;
import org.moultwright.ui.control.Card;
import org.moultwright.ui.control.ChoiceGroup;
import org.moultwright.ui.control.Columns;
import org.moultwright.ui.control.Flow;
import org.moultwright.ui.control.FormFoot;
import org.moultwright.ui.control.Scrolled;
import org.moultwright.ui.control.ToggleChip;
import org.moultwright.ui.control.Words;

/** Lays out the form for a sac that is not opened yet. */
final class BeginView extends SacFormView {
    private final BeginForm form;

    BeginView(BeginForm form) {
        super(form);
        this.form = form;
        getChildren().addAll(head(Texts.say("A new sac"), Texts.say("what you know now; ranges are fine")));
        Card card = new Card(new Scrolled(fields()));
        HBox.setHgrow(card, Priority.ALWAYS);
        Columns cards = new Columns(card, meaning());
        cards.getStyleClass().add("card-row");
        setVgrow(cards, Priority.ALWAYS);
        getChildren()
                .addAll(
                        cards,
                        new FormFoot(
                                Buttons.taking(Texts.say("Keep, and open it now"), form::keepAndOpen),
                                Buttons.primary(Texts.say("Keep this sac"), this::keep)));
    }

    private static Node meaning() {
        VBox words = new VBox(
                Words.wrapped(Words.plain(Texts.say(
                        "The sac is a brood from now on, and has its dates: its age in warm-days, when to take it "
                                + "from the mother, when most inside are nymphs."))),
                Words.wrapped(Words.plain(Texts.say(
                        "They rest on the days it can have been laid and on where it stands. A range of days is "
                                + "better than a wrong day; what you do not know stays empty."))),
                Words.wrapped(Words.caption(Texts.say(
                        "Enter goes on to the next field. What you type is on disk at once; leave the page, and "
                                + "it is here again."))));
        words.getStyleClass().add("sac-words");
        Card card = Card.titled(Texts.say("What comes of it"), words);
        card.getStyleClass().add("sac-meaning");
        return card;
    }

    private GridPane fields() {
        GridPane grid = wide();
        row(grid, 0, Words.plain(Texts.say("Code")), inputs().words(form.code(), "GP-26-A"));
        row(
                grid,
                1,
                Words.plain(Texts.say("Species")),
                inputs().choice(form.taxon(), Texts.say("its scientific name"), form::knownSpecies));
        row(
                grid,
                2,
                Words.plain(Texts.say("Mother")),
                inputs().choice(form.mother(), Texts.say("her code, if any"), form::knownMothers));
        row(grid, 3, Words.plain(Texts.say("Laid, first day")), day(form.laid(), Texts.say("26 Feb or 26.2.")));
        row(grid, 4, Words.plain(Texts.say("and last day")), day(form.laidTo(), Texts.say("the same")));
        row(grid, 5, Words.plain(Texts.say("The sac is")), where());
        Node word = Words.plain(Texts.say("Taken on"));
        Node taken = day(form.pulled(), Texts.say("today"));
        row(grid, 6, word, taken);
        ObservableValue<Boolean> isTaken = form.whereProperty().map(now -> now == BeginForm.Where.TAKEN);
        Stream.of(word, taken).forEach(node -> {
            node.visibleProperty().bind(isTaken);
            node.managedProperty().bind(node.visibleProperty());
        });
        row(
                grid,
                7,
                Words.plain(Texts.say("Stands in")),
                inputs().choice(form.inside(), Texts.say("box or incubator, hers or its own"), form::places));
        return grid;
    }

    private Node day(FormField field, String example) {
        return inputs().day(field, example, field.textProperty().map(form::dayInWords));
    }

    private Node where() {
        ToggleChip mother = new ToggleChip(Texts.say("with the mother"));
        ToggleChip taken = new ToggleChip(Texts.say("taken from her"));
        ChoiceGroup<BeginForm.Where> group = new ChoiceGroup<>(form.whereProperty(), form.whereProperty()::set);
        group.add(mother, BeginForm.Where.WITH_MOTHER);
        group.add(taken, BeginForm.Where.TAKEN);
        Flow chips = new Flow(mother, taken);
        chips.getStyleClass().add("form-row");
        return chips;
    }
}
