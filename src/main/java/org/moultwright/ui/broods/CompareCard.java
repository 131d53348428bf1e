package org.moultwright.ui.broods;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.collections.ListChangeListener;
import javafx.geometry.HPos;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.Flow;
import org.moultwright.ui.control.Scrolled;
import org.moultwright.ui.control.ToggleChip;
import org.moultwright.ui.control.Words;

/** A brood in numbers, and others beside it. */
final class CompareCard extends VBox {
    private final BroodPage page;
    private final GridPane table = new GridPane();

    CompareCard(BroodPage page) {
        this.page = page;
        FlowPane chips = new FlowPane();
        chips.getStyleClass().addAll("chips", "tight");
        page.beside().others().forEach(code -> {
            ToggleChip chip = new ToggleChip(code);
            chip.getStyleClass().add("small-chip");
            chip.setAccessibleText(Texts.say("compare with {0}", code));
            chip.setOnAction(event -> {
                page.beside().toggle(code);
                chip.setSelected(page.beside().chosen().contains(code));
            });
            chips.getChildren().add(chip);
        });
        Label none = Words.wrapped(Words.caption(Texts.say("No other brood to lay beside it yet.")));
        none.setVisible(page.beside().others().isEmpty());
        none.setManaged(page.beside().others().isEmpty());
        table.getStyleClass().addAll("form", "compare-table");
        getStyleClass().addAll("card", "compare-card");
        Scrolled scrolled = new Scrolled(Texts.say("the brood in numbers"), table);
        Scrolled choice = new Scrolled(chips);
        choice.getStyleClass().add("compare-choice");
        HBox.setHgrow(choice, Priority.ALWAYS);
        Flow head = new Flow(Words.whole(Words.cardTitle(Texts.say("Beside"))), choice);
        head.getStyleClass().add("card-head");
        getChildren().addAll(head, none, scrolled);
        page.beside().facts().addListener((ListChangeListener<BroodFacts>) change -> lay());
        lay();
    }

    private void lay() {
        table.getChildren().clear();
        List<Map<String, String>> columns = page.beside().facts().stream()
                .map(one -> one.numbers(page.vocabulary()))
                .toList();
        for (int i = 0; i < columns.size(); i++) {
            table.add(number(Words.strong(page.beside().facts().get(i).brood().code())), i + 1, 0);
        }
        columns.stream().findFirst().ifPresent(own -> {
            int row = 1;
            for (String name : own.keySet()) {
                table.add(Words.whole(Words.muted(name)), 0, row);
                for (int i = 0; i < columns.size(); i++) {
                    String words = Optional.ofNullable(columns.get(i).get(name)).orElse("");
                    table.add(number(Words.plain(words)), i + 1, row);
                }
                row++;
            }
        });
    }

    private static Label number(Label label) {
        GridPane.setHalignment(label, HPos.RIGHT);
        return Words.whole(label);
    }
}
