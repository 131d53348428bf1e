package org.moultwright.ui.shelf;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import javafx.application.Platform;
import javafx.beans.Observable;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import javafx.scene.Node;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Control;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;
import org.jspecify.annotations.Nullable;
import org.moultwright.domain.ContainerKind;
import org.moultwright.language.Texts;
import org.moultwright.text.Vocabulary;
import org.moultwright.ui.control.Buttons;
import org.moultwright.ui.control.ByLetter;
import org.moultwright.ui.control.DayPicker;
import org.moultwright.ui.control.EntryField;
import org.moultwright.ui.control.EntryRow;
import org.moultwright.ui.control.Flow;
import org.moultwright.ui.control.FormFields;
import org.moultwright.ui.control.Keys;
import org.moultwright.ui.control.NumberField;
import org.moultwright.ui.control.Refusable;
import org.moultwright.ui.control.StageChip;
import org.moultwright.ui.control.Typable;
import org.moultwright.ui.control.Words;

/** What is being done to a card, as fields. Enter does it, Escape leaves it. */
final class FormCard extends VBox {
    private static final Typable CODE = Typable.words(40);

    private final ShelfViewModel model;
    private final ShelfForm form;
    private final Map<Observable, Control> inputs = new HashMap<>();
    private Optional<Control> first = Optional.empty();

    FormCard(ShelfViewModel model, ShelfForm form, Vocabulary names) {
        this.model = model;
        this.form = form;
        getStyleClass().addAll("card", "shelf-form");
        getChildren().add(Words.cardTitle(form.title()));
        if (form instanceof MoveForm move) {
            lay(move);
        } else if (form instanceof MergeForm merge) {
            lay(merge);
        } else if (form instanceof SplitForm split) {
            lay(split, names);
        } else if (form instanceof AddForm add) {
            lay(add);
        }
        Flow actions = new Flow(
                Buttons.primary(form.verb(), this::submit), Buttons.secondary(Texts.say("Cancel"), model::closeForm));
        actions.getStyleClass().add("page-actions");
        actions.setStyle("-fx-alignment: center-left;");
        getChildren().add(actions);
        addEventHandler(KeyEvent.KEY_PRESSED, this::pressed);
        // A field with a filter of its own keeps Escape to itself.
        addEventFilter(KeyEvent.KEY_PRESSED, event -> {
            if (event.getCode() == KeyCode.ESCAPE) {
                model.closeForm();
                event.consume();
            }
        });
    }

    ShelfForm form() {
        return form;
    }

    /** Once what was pressed is over, for the key that opened the form is not for its fields. */
    void focusFirst() {
        first.ifPresent(field -> Platform.runLater(field::requestFocus));
    }

    /** The keeper is back: what was typed is gone on with, not typed over. */
    void takeFocus() {
        form.refused().map(inputs::get).or(() -> first).ifPresent(left -> {
            left.requestFocus();
            if (left instanceof TextField field) {
                field.end();
            }
        });
    }

    private void submit() {
        model.submit();
        form.refused().map(inputs::get).ifPresent(Control::requestFocus);
    }

    private void lay(MoveForm move) {
        EntryField where = entry(Texts.say("move to"), move.targets().typedProperty());
        Flow when = new Flow(
                new DayPicker(Texts.say("day it was moved"), move.dayProperty()),
                field(Texts.say("time of day"), Texts.say("now"), move.timeProperty()));
        when.getStyleClass().add("form-row");
        getChildren().add(caption(Texts.say("Into")));
        choose(where, move.targets());
        getChildren().addAll(caption(Texts.say("Since")), when);
    }

    private void lay(MergeForm merge) {
        EntryField into = entry(Texts.say("join with"), merge.targets().typedProperty());
        CheckBox putAway = new CheckBox(Texts.say("put the empty tray away"));
        putAway.selectedProperty().bindBidirectional(merge.putAwayProperty());
        getChildren().add(caption(Texts.say("All its animals go into")));
        choose(into, merge.targets());
        getChildren().add(putAway);
    }

    /** Arrow keys in the field choose from the list beneath, so that the hands stay where they type. */
    private void choose(EntryField field, Targets targets) {
        field.input().setPromptText(Texts.say("type a code, arrows choose"));
        field.input().addEventFilter(KeyEvent.KEY_PRESSED, event -> {
            if (event.getCode() == KeyCode.DOWN || event.getCode() == KeyCode.UP) {
                targets.step(event.getCode() == KeyCode.DOWN ? 1 : -1);
                event.consume();
            }
        });
        getChildren().addAll(field, new TargetList(targets));
        first = Optional.of(field.input());
    }

    private void lay(SplitForm split, Vocabulary names) {
        getChildren().add(caption(Texts.say("How many of each")));
        split.counts().forEach((stage, count) -> {
            NumberField number =
                    FormFields.quiet(new NumberField(Texts.say("how many {0}", names.plural(stage))), "number-field");
            number.valueProperty().bindBidirectional(count);
            Label seen = Words.caption("");
            seen.textProperty().bind(split.seen(stage));
            Flow row = new Flow(new StageChip(stage, names.label(stage)), ContainerCard.gap(), seen, number);
            row.getStyleClass().add("shelf-count");
            number.problemProperty().bind(form.problemOf(count));
            inputs.put(count, number.input());
            getChildren().add(new EntryRow(row, number));
            if (first.isEmpty() && split.holds(stage)) {
                first = Optional.of(number.input());
            }
        });
        getChildren()
                .addAll(
                        caption(Texts.say("To tray; a new code makes one beside it")),
                        entry(Texts.say("to which tray, a new code makes one"), split.toProperty()));
        if (split.isolates()) {
            getChildren()
                    .addAll(
                            caption(Texts.say("Why")),
                            field(Texts.say("why"), Texts.say("failed moult"), split.reasonProperty()));
        }
    }

    private void lay(AddForm add) {
        EntryField code = entry(Texts.say("code"), add.codeProperty());
        code.input().setPromptText(Texts.say("box 3"));
        getChildren()
                .addAll(
                        caption(Texts.say("Code")),
                        code,
                        caption(Texts.say("Kind")),
                        choice(
                                Texts.say("kind"),
                                FXCollections.observableArrayList(ContainerKind.values()),
                                add.kindProperty(),
                                new KindWord()),
                        caption(Texts.say("Stands in")),
                        choice(Texts.say("stands in"), add.places(), add.insideProperty(), new Plain()));
        first = Optional.of(code.input());
    }

    private EntryField entry(String name, StringProperty value) {
        EntryField field = FormFields.quiet(new EntryField(name, CODE), "wide");
        field.textProperty().bindBidirectional(value);
        field.problemProperty().bind(form.problemOf(value));
        inputs.put(value, field.input());
        return field;
    }

    private Refusable field(String name, String example, StringProperty value) {
        TextField field = new TextField();
        field.setAccessibleText(name);
        field.setPromptText(example);
        field.textProperty().bindBidirectional(value);
        Refusable whole = refusable(field, field, value);
        HBox.setHgrow(whole, Priority.ALWAYS);
        return whole;
    }

    private <T> Refusable choice(
            String name, ObservableList<T> values, ObjectProperty<@Nullable T> value, StringConverter<T> words) {
        ChoiceBox<T> choice = new ChoiceBox<>();
        choice.setMinWidth(Region.USE_PREF_SIZE);
        choice.setItems(values);
        choice.setConverter(words);
        choice.setAccessibleText(name);
        choice.setMaxWidth(Double.MAX_VALUE);
        choice.valueProperty().bindBidirectional(value);
        ByLetter.choose(choice);
        return refusable(choice, choice, value);
    }

    private Refusable refusable(Node whole, Control input, Observable value) {
        Refusable refusable = new Refusable(whole, input);
        refusable.problemProperty().bind(form.problemOf(value));
        inputs.put(value, input);
        return refusable;
    }

    private static Label caption(String words) {
        return Words.caption(words);
    }

    private void pressed(KeyEvent event) {
        if (event.getCode() == KeyCode.ENTER) {
            if (!Keys.press(event)) {
                submit();
            }
            event.consume();
        }
    }

    private static final class KindWord extends StringConverter<ContainerKind> {
        @Override
        public String toString(ContainerKind kind) {
            return kind == null ? "" : kind.word();
        }

        @Override
        public ContainerKind fromString(String key) {
            return ContainerKind.fromKey(key).orElse(ContainerKind.BOX);
        }
    }

    private static final class Plain extends StringConverter<String> {
        @Override
        public String toString(String text) {
            return text == null ? "" : text;
        }

        @Override
        public String fromString(String text) {
            return text;
        }
    }
}
