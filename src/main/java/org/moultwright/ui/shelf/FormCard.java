package org.moultwright.ui.shelf;

import java.util.List;
import javafx.application.Platform;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.StringProperty;
import javafx.scene.Node;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
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
import org.moultwright.ui.control.DayPicker;
import org.moultwright.ui.control.EntryField;
import org.moultwright.ui.control.Flow;
import org.moultwright.ui.control.NumberField;
import org.moultwright.ui.control.StageChip;
import org.moultwright.ui.control.Typable;
import org.moultwright.ui.control.Words;

/** What is being done to a card, as fields. Enter does it, Escape leaves it. */
final class FormCard extends VBox {
    private static final Typable CODE = Typable.words(40);

    private final ShelfViewModel model;
    private Node first = this;

    FormCard(ShelfViewModel model, ShelfForm form, Vocabulary names) {
        this.model = model;
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
                Buttons.primary(form.verb(), model::submit), Buttons.secondary(Texts.say("Cancel"), model::closeForm));
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

    /** Once what was pressed is over, for the key that opened the form is not for its fields. */
    void focusFirst() {
        Platform.runLater(first::requestFocus);
    }

    private void lay(MoveForm move) {
        EntryField where = entry(Texts.say("move to"), move.targets().typedProperty(), move);
        where.input().setPromptText(Texts.say("type a code, arrows choose"));
        listen(where, move.targets());
        Flow when = new Flow(
                new DayPicker(Texts.say("day it was moved"), move.dayProperty()),
                field(Texts.say("time of day"), Texts.say("now"), move.timeProperty()));
        when.getStyleClass().add("form-row");
        getChildren()
                .addAll(caption(Texts.say("Into")), where, list(move.targets()), caption(Texts.say("Since")), when);
        first = where.input();
    }

    private void lay(MergeForm merge) {
        EntryField into = entry(Texts.say("join with"), merge.targets().typedProperty(), merge);
        into.input().setPromptText(Texts.say("type a code, arrows choose"));
        listen(into, merge.targets());
        CheckBox putAway = new CheckBox(Texts.say("put the empty tray away"));
        putAway.selectedProperty().bindBidirectional(merge.putAwayProperty());
        getChildren().addAll(caption(Texts.say("All its animals go into")), into, list(merge.targets()), putAway);
        first = into.input();
    }

    private void lay(SplitForm split, Vocabulary names) {
        getChildren().add(caption(Texts.say("How many of each")));
        split.counts().forEach((stage, count) -> {
            NumberField number = new NumberField(Texts.say("how many {0}", names.plural(stage)));
            number.getStyleClass().remove("big-entry");
            number.getStyleClass().add("number-field");
            number.valueProperty().bindBidirectional(count);
            Flow row = new Flow(
                    new StageChip(stage, names.label(stage)),
                    ContainerCard.gap(),
                    Words.caption(Texts.say("of {0}", split.seen(stage))),
                    number);
            row.getStyleClass().add("shelf-count");
            getChildren().add(row);
            if (first == this && split.seen(stage) > 0) {
                first = number.input();
            }
        });
        EntryField to = entry(Texts.say("to which tray, a new code makes one"), split.toProperty(), split);
        getChildren().addAll(caption(Texts.say("To tray; a new code makes one beside it")), to);
        if (split.isolates()) {
            getChildren()
                    .addAll(
                            caption(Texts.say("Why")),
                            field(Texts.say("why"), Texts.say("failed moult"), split.reasonProperty()));
        }
    }

    private void lay(AddForm add) {
        EntryField code = entry(Texts.say("code"), add.codeProperty(), add);
        code.input().setPromptText(Texts.say("box 3"));
        getChildren()
                .addAll(
                        caption(Texts.say("Code")),
                        code,
                        caption(Texts.say("Kind")),
                        choice(Texts.say("kind"), List.of(ContainerKind.values()), add.kindProperty(), new KindWord()),
                        caption(Texts.say("Stands in")),
                        choice(Texts.say("stands in"), add.places(), add.insideProperty(), new Plain()));
        first = code.input();
    }

    /** A field under which the form says what is wrong with it. */
    private static EntryField entry(String name, StringProperty value, ShelfForm form) {
        EntryField field = new EntryField(name, CODE);
        field.getStyleClass().remove("big-entry");
        field.textProperty().bindBidirectional(value);
        field.problemProperty().bind(form.problemProperty());
        return field;
    }

    private static TextField field(String name, String example, StringProperty value) {
        TextField field = new TextField();
        field.setAccessibleText(name);
        field.setPromptText(example);
        field.textProperty().bindBidirectional(value);
        HBox.setHgrow(field, Priority.ALWAYS);
        return field;
    }

    private static <T> ChoiceBox<T> choice(
            String name, List<T> values, ObjectProperty<@Nullable T> value, StringConverter<T> words) {
        ChoiceBox<T> choice = new ChoiceBox<>();
        choice.setMinWidth(Region.USE_PREF_SIZE);
        choice.getItems().setAll(values);
        choice.setConverter(words);
        choice.setAccessibleText(name);
        choice.setMaxWidth(Double.MAX_VALUE);
        choice.valueProperty().bindBidirectional(value);
        return choice;
    }

    private static ListView<Targets.Target> list(Targets targets) {
        ListView<Targets.Target> list = new ListView<>(targets.fitting());
        list.setAccessibleText(Texts.say("places that fit"));
        list.getStyleClass().add("shelf-targets");
        list.setCellFactory(view -> new TargetCell());
        list.setFocusTraversable(false);
        targets.chosenProperty().addListener((observed, before, now) -> show(list, now));
        show(list, targets.chosenProperty().get());
        list.getSelectionModel().selectedItemProperty().addListener((observed, before, now) -> {
            if (now != null) {
                targets.chosenProperty().set(now);
            }
        });
        return list;
    }

    private static void show(ListView<Targets.Target> list, Targets.@Nullable Target target) {
        if (target == null) {
            list.getSelectionModel().clearSelection();
        } else {
            list.getSelectionModel().select(target);
            list.scrollTo(target);
        }
    }

    /** Arrow keys in the field choose from the list, so that the hands stay where they type. */
    private static void listen(EntryField field, Targets targets) {
        field.input().addEventFilter(KeyEvent.KEY_PRESSED, event -> {
            if (event.getCode() == KeyCode.DOWN || event.getCode() == KeyCode.UP) {
                targets.step(event.getCode() == KeyCode.DOWN ? 1 : -1);
                event.consume();
            }
        });
    }

    private static Label caption(String words) {
        return Words.caption(words);
    }

    private void pressed(KeyEvent event) {
        if (event.getCode() == KeyCode.ENTER) {
            model.submit();
            event.consume();
        }
    }

    private static final class TargetCell extends ListCell<Targets.Target> {
        @Override
        protected void updateItem(Targets.@Nullable Target target, boolean empty) {
            super.updateItem(target, empty);
            if (target == null || empty) {
                setGraphic(null);
            } else {
                Flow row = new Flow(Words.strong(target.title()), Words.caption(target.detail()));
                row.getStyleClass().add("shelf-line");
                setGraphic(row);
            }
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
