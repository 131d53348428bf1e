package org.moultwright.ui.broods;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.VBox;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.EntryField;
import org.moultwright.ui.control.Focus;
import org.moultwright.ui.control.Typable;
import org.moultwright.ui.control.Words;

/** The fields of a form in the order they are read, each with its problem beneath. Enter goes on to the next. */
final class FormInputs {
    private static final Typable WORDS = Typable.words(80);
    private static final Typable ANIMALS = Typable.wholeNumber(5);
    private static final Typable TRAYS = Typable.wholeNumber(2);
    private static final Typable GRAMS = Typable.number(4, 4);
    private static final int CHOICES_SHOWN = 5;

    private final List<TextField> order = new ArrayList<>();
    private final Runnable afterLast;

    /** @param afterLast is done by Enter in the last field */
    FormInputs(Runnable afterLast) {
        this.afterLast = afterLast;
    }

    EntryField words(FormField field, String example) {
        return entry(field, WORDS, example);
    }

    EntryField animals(FormField field) {
        return narrow(entry(field, ANIMALS, ""));
    }

    EntryField trays(FormField field) {
        return narrow(entry(field, TRAYS, "1"));
    }

    EntryField grams(FormField field) {
        return narrow(entry(field, GRAMS, ""));
    }

    /** A field whose arrow keys go through what there is, named beneath as far as it fits what is typed. */
    Node choice(FormField field, String example, Supplier<List<String>> choices) {
        EntryField entry = words(field, example);
        Choices chosen = new Choices(entry.input(), choices);
        Label shown = Words.caption("");
        shown.managedProperty().bind(shown.textProperty().isNotEmpty());
        Runnable tell = () -> shown.setText(chosen.words(CHOICES_SHOWN));
        entry.textProperty().addListener((observed, before, now) -> tell.run());
        tell.run();
        entry.input().setAccessibleRoleDescription(Texts.say("arrow keys choose"));
        return new VBox(entry, shown);
    }

    /** A field for a day, and beneath it what is read. */
    Node day(FormField field, String example, ObservableValue<String> read) {
        Label shown = Words.caption("");
        shown.textProperty().bind(read);
        shown.managedProperty().bind(shown.textProperty().isNotEmpty());
        return new VBox(words(field, example), shown);
    }

    /** The fields laid anew: those given up are forgotten. */
    void forget(List<TextField> gone) {
        order.removeAll(gone);
    }

    List<TextField> all() {
        return List.copyOf(order);
    }

    /** Enter in a field goes on to the next that is seen. */
    void pressed(KeyEvent event) {
        if (event.getCode() == KeyCode.ENTER
                && event.getTarget() instanceof TextField input
                && !event.isShortcutDown()) {
            next(input).ifPresentOrElse(TextField::requestFocus, afterLast);
            event.consume();
        }
    }

    void focusFirst() {
        TextField first = order.stream().filter(Focus::isShown).findFirst().orElseThrow();
        Focus.on(first);
    }

    /** The first field with something wrong. */
    void focusProblem() {
        order.stream()
                .filter(FormInputs::isSeen)
                .filter(input -> input.getAccessibleHelp() != null
                        && !input.getAccessibleHelp().isEmpty())
                .findFirst()
                .ifPresent(TextField::requestFocus);
    }

    private Optional<TextField> next(TextField input) {
        int at = order.indexOf(input);
        return order.stream().skip(at + 1L).filter(FormInputs::isSeen).findFirst();
    }

    private static boolean isSeen(TextField input) {
        return input.getScene() != null && Focus.isShown(input);
    }

    private static EntryField narrow(EntryField entry) {
        entry.getStyleClass().add("number-field");
        return entry;
    }

    private EntryField entry(FormField field, Typable typable, String example) {
        EntryField entry = new EntryField(field.name(), typable);
        entry.getStyleClass().remove("big-entry");
        entry.input().setPromptText(example);
        entry.textProperty().bindBidirectional(field.textProperty());
        entry.problemProperty().bind(field.problemProperty());
        entry.input().focusedProperty().addListener((observed, before, focused) -> {
            if (!focused) {
                field.left();
            }
        });
        order.add(entry.input());
        return entry;
    }
}
