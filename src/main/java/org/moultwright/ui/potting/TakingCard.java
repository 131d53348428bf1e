package org.moultwright.ui.potting;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javafx.beans.InvalidationListener;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.moultwright.language.Texts;
import org.moultwright.text.TaxonWords;
import org.moultwright.text.Vocabulary;
import org.moultwright.ui.control.Buttons;
import org.moultwright.ui.control.EntryField;
import org.moultwright.ui.control.FormFields;
import org.moultwright.ui.control.NumberField;
import org.moultwright.ui.control.ToggleChip;
import org.moultwright.ui.control.Words;

/** Which broods are on the bench, and how many animals of each of their trays go into pots of which size. */
final class TakingCard extends VBox {
    private static final int COLUMNS = 7;

    private final PottingViewModel model;
    private final FlowPane broods = new FlowPane();
    private final GridPane trays = new GridPane();
    private final Map<NumberField, Taking> fields = new LinkedHashMap<>();
    private final Map<EntryField, Taking> sizes = new LinkedHashMap<>();
    private int line;

    TakingCard(PottingViewModel model) {
        this.model = model;
        broods.getStyleClass().addAll("chips", "tight");
        trays.getStyleClass().add("bench-grid");
        getStyleClass().add("card");
        getChildren().addAll(Words.cardTitle(Texts.say("Into pots today")), broods, trays);
        InvalidationListener choose = changed -> showBroods();
        model.choicesProperty().addListener(choose);
        model.benchProperty().addListener(choose);
        model.benchProperty().addListener((observed, before, now) -> showTrays());
        showBroods();
        showTrays();
    }

    void focusFirst() {
        fields.keySet().stream().findFirst().ifPresent(TakingCard::takeFocus);
    }

    /** Another size of pots for the tray whose field has the focus; its number is to be typed next. */
    void addSize() {
        fields.entrySet().stream()
                .filter(entry -> entry.getKey().input().isFocused())
                .map(Map.Entry::getValue)
                .findFirst()
                .or(() -> sizes.entrySet().stream()
                        .filter(entry -> entry.getKey().input().isFocused())
                        .map(Map.Entry::getValue)
                        .findFirst())
                .ifPresent(this::addSize);
    }

    private void addSize(Taking taking) {
        model.addSize(taking);
        fields.entrySet().stream()
                .filter(entry -> entry.getValue() == taking)
                .map(Map.Entry::getKey)
                .reduce((earlier, later) -> later)
                .ifPresent(TakingCard::takeFocus);
    }

    private static void takeFocus(NumberField field) {
        field.input().requestFocus();
        field.input().selectAll();
    }

    /** One brood needs no choosing. */
    private void showBroods() {
        List<String> codes = model.choicesProperty().get();
        broods.setManaged(codes.size() > 1);
        broods.setVisible(codes.size() > 1);
        broods.getChildren().setAll(codes.stream().map(this::chip).toList());
    }

    private ToggleChip chip(String code) {
        ToggleChip chip = new ToggleChip(code);
        chip.setSelected(model.isOnBench(code));
        chip.setOnAction(event -> {
            model.lay(code, chip.isSelected());
            chip.setSelected(model.isOnBench(code));
        });
        return chip;
    }

    private void showTrays() {
        trays.getChildren().clear();
        fields.clear();
        sizes.clear();
        line = 0;
        model.benchProperty().get().ifPresent(bench -> {
            String brood = "";
            for (Taking taking : bench.takings()) {
                String code = taking.brood().code();
                if (bench.isOfSeveral() && !code.equals(brood)) {
                    addWide(Words.strong(
                            code + " · " + TaxonWords.abbreviated(taking.brood().taxon())));
                }
                brood = code;
                addTray(bench, taking);
            }
        });
    }

    private void addWide(Node node) {
        trays.add(node, 0, line++, COLUMNS, 1);
    }

    private void addTray(Bench bench, Taking taking) {
        Region hairline = new Region();
        hairline.getStyleClass().add("hairline");
        addWide(hairline);
        String name = bench.name(taking);
        Label ready = taking.ready() > 0 ? Words.plain(ready(taking)) : Words.muted(ready(taking));
        ready.getStyleClass().add("bench-ready");
        trays.addRow(
                line,
                Words.whole(Words.styled(taking.tray().tray(), "tray-code")),
                Words.whole(Words.muted(taking.tray().place())),
                ready);
        for (int i = 0; i < taking.portions().size(); i++) {
            addPortion(taking, taking.portions().get(i), i == 0 ? name : Texts.say("{0}, size {1}", name, i + 1));
            if (i == 0) {
                trays.add(stay(taking), 5, line);
                trays.add(anotherSize(taking, name), 6, line);
            }
            line++;
        }
    }

    private void addPortion(Taking taking, Portion portion, String name) {
        NumberField taken = new NumberField(Texts.say("taken from {0}", name));
        taken.valueProperty().bindBidirectional(portion.takenProperty());
        if (portion == taking.portions().get(0)) {
            taken.problemProperty().bind(taking.problemProperty());
        }
        fields.put(taken, taking);
        EntryField size = FormFields.quiet(
                new EntryField(Texts.say("pot size for {0}", name), LabelCard.POT_SIZE), "number-field");
        size.textProperty().bindBidirectional(portion.potSizeProperty());
        size.input()
                .promptTextProperty()
                .bind(model.potSizeProperty().map(ofAll -> ofAll.isBlank() ? Texts.say("size") : ofAll));
        sizes.put(size, taking);
        GridPane.setFillHeight(taken, false);
        GridPane.setFillHeight(size, false);
        trays.add(taken, 3, line);
        trays.add(size, 4, line);
    }

    private Label stay(Taking taking) {
        Label stay = Words.wrapped(Words.muted(""));
        stay.getStyleClass().add("bench-stay");
        stay.setMaxWidth(Double.MAX_VALUE);
        GridPane.setHgrow(stay, Priority.ALWAYS);
        Vocabulary names = model.vocabularyProperty().get();
        Runnable tell = () -> stay.setText(PottingWords.stay(taking, names, model.days()));
        taking.portions()
                .forEach(portion -> portion.takenProperty().addListener((observed, before, now) -> tell.run()));
        tell.run();
        return stay;
    }

    /** By keyboard it is a key of the screen, so that Tab goes from number to number. */
    private Button anotherSize(Taking taking, String name) {
        Button another = Buttons.secondary(Texts.say("Other size"), () -> addSize(taking));
        another.setAccessibleText(Texts.say("another pot size for {0}", name));
        another.getStyleClass().add("small-button");
        another.setMinWidth(Region.USE_PREF_SIZE);
        another.setFocusTraversable(false);
        return another;
    }

    private String ready(Taking taking) {
        return PottingWords.ready(taking, model.vocabularyProperty().get());
    }
}
