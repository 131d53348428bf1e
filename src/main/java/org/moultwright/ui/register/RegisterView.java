package org.moultwright.ui.register;

import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.Banner;
import org.moultwright.ui.control.Card;
import org.moultwright.ui.control.ChoiceGroup;
import org.moultwright.ui.control.Columns;
import org.moultwright.ui.control.Em;
import org.moultwright.ui.control.EmptyState;
import org.moultwright.ui.control.EntryField;
import org.moultwright.ui.control.Flow;
import org.moultwright.ui.control.FormFields;
import org.moultwright.ui.control.PageHeader;
import org.moultwright.ui.control.Sign;
import org.moultwright.ui.control.ToggleChip;
import org.moultwright.ui.control.Tone;
import org.moultwright.ui.control.Typable;
import org.moultwright.ui.control.Words;

/** Lays out the register: scanning above, the pots at the left, the one looked at at the right. */
final class RegisterView extends VBox {
    private static final Typable WORDS = Typable.words(60);

    private final RegisterViewModel model;
    private final ScanBar scan;
    private final Em type = new Em();
    private final PotTable table;
    private final EntryField filter =
            FormFields.quiet(new EntryField(Texts.say("filter by words"), WORDS), "filter-field");
    private final PageHeader header = new PageHeader(Texts.say("Register"));
    private final Label disagreement = Words.wrapped(Words.styled("", "warn"));

    /**
     * @param openSlip opens a hand-over slip for the pots concerned
     * @param openLabels opens their labels
     */
    RegisterView(RegisterViewModel model, Runnable openSlip, Runnable openLabels) {
        this.model = model;
        this.scan = new ScanBar(model);
        this.table = new PotTable(model, type);
        Columns columns = new Columns(pots(openSlip, openLabels), new PotCard(model));
        columns.getStyleClass().add("bench-columns");
        setVgrow(columns, Priority.ALWAYS);
        Card empty = new Card(new EmptyState(Sign.REGISTER, RegisterWords.EMPTY));
        setVgrow(empty, Priority.ALWAYS);
        getStyleClass().addAll("page", "register");
        getChildren()
                .addAll(
                        header,
                        banner(Tone.OK, model.deeds().doneProperty()),
                        banner(Tone.BAD, model.deeds().problemProperty()),
                        scan,
                        empty,
                        columns);
        Runnable show = () -> {
            boolean none = model.all().isEmpty();
            show(empty, none);
            show(columns, !none);
            show(scan, !none);
            header.subtitleProperty().set(RegisterWords.subtitle(model.all()));
            disagreement.setText(model.disagreement());
        };
        model.whenRead(show);
        show.run();
        addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
        addEventFilter(KeyEvent.KEY_TYPED, this::typed);
    }

    /** Puts the keeper's hands where a label is scanned. */
    void takeFocus() {
        scan.takeFocus();
    }

    private Node pots(Runnable openSlip, Runnable openLabels) {
        filter.input().setPromptText(Texts.say("filter: code, brood, size, state"));
        filter.textProperty().bindBidirectional(model.filterTextProperty());
        Flow kinds = new Flow();
        kinds.getStyleClass().add("span-chips");
        ChoiceGroup<RegisterFilter.Kind> group = new ChoiceGroup<>(model.kindProperty(), model.kindProperty()::set);
        for (RegisterFilter.Kind kind : RegisterFilter.Kind.values()) {
            ToggleChip chip = new ToggleChip(kind.word());
            chip.getStyleClass().add("small-chip");
            group.add(chip, kind);
            kinds.getChildren().add(chip);
        }
        Flow head = new Flow(filter, kinds);
        head.getStyleClass().add("card-head");
        Runnable words = () -> table.setEmptyWords(
                model.kindProperty().get() == RegisterFilter.Kind.SELECTED
                        ? RegisterWords.NONE_SELECTED
                        : RegisterWords.NONE_SHOWN);
        model.kindProperty().addListener((observed, before, now) -> words.run());
        words.run();
        disagreement.managedProperty().bind(disagreement.textProperty().isNotEmpty());
        Region hairline = new Region();
        hairline.getStyleClass().add("hairline");
        Card card = new Card(head, table, hairline, disagreement, new ActionBar(model, openSlip, openLabels), type);
        card.getStyleClass().add("pots-card");
        VBox.setVgrow(table, Priority.ALWAYS);
        HBox.setHgrow(card, Priority.ALWAYS);
        return card;
    }

    private void pressed(KeyEvent event) {
        if (event.getCode() == KeyCode.F2) {
            scan.takeFocus();
        } else if (event.getCode() == KeyCode.F3) {
            filter.input().requestFocus();
            filter.input().selectAll();
        } else if (isLeavingField(event)) {
            table.begin();
            table.requestFocus();
        } else if (!RegisterKeys.pressed(event, model)) {
            return;
        }
        event.consume();
    }

    /** Down leads from either field into the pots; so does Enter from the filter. */
    private boolean isLeavingField(KeyEvent event) {
        boolean inFilter = event.getTarget() == filter.input();
        return switch (event.getCode()) {
            case ENTER -> inFilter;
            case DOWN -> inFilter || event.getTarget() == scan.field();
            default -> false;
        };
    }

    private void typed(KeyEvent event) {
        if (RegisterKeys.isOfACode(event)) {
            scan.begin(event.getCharacter());
            event.consume();
        }
    }

    private static void show(Node node, boolean visible) {
        node.setVisible(visible);
        node.setManaged(visible);
    }

    private static Banner banner(Tone tone, ObservableValue<String> sentence) {
        Banner banner = new Banner(tone);
        banner.sentenceProperty().bind(sentence);
        return banner;
    }
}
