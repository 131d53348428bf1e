package org.moultwright.ui.potting;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javafx.beans.binding.Bindings;
import javafx.beans.value.ObservableValue;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.Flow;
import org.moultwright.ui.control.NumberField;
import org.moultwright.ui.control.Words;

/** What became of the animals taken, tray by tray. */
final class OutcomeCard extends VBox {
    private final VBox rows = new VBox();
    private final Map<Portion, Flow> made = new HashMap<>();
    private final Label bySize = Words.wrapped(Words.plain(""));
    private final PottingViewModel model;

    OutcomeCard(PottingViewModel model) {
        this.model = model;
        rows.getStyleClass().add("outcome-rows");
        getStyleClass().add("card");
        getChildren().addAll(Words.cardTitle(Texts.say("When they are in")), rows, bySize);
        bySize.managedProperty().bind(bySize.textProperty().isNotEmpty());
        bySize.visibleProperty().bind(bySize.managedProperty());
        model.onBench().benchProperty().addListener((observed, before, now) -> {
            made.clear();
            showRows();
        });
        model.sumsProperty().addListener((observed, before, now) -> {
            showRows();
        });
        bySize.textProperty().bind(model.sumsProperty().map(BenchSums::bySize));
        showRows();
    }

    /** A row for each portion of which something is taken, made once that is so: a full bench has many more portions. */
    private void showRows() {
        List<Node> shown = new ArrayList<>();
        model.onBench()
                .benchProperty()
                .get()
                .ifPresent(bench -> bench.takings()
                        .forEach(taking -> taking.portions().stream()
                                .filter(portion -> portion.taken() > 0)
                                .forEach(portion ->
                                        shown.add(made.computeIfAbsent(portion, one -> row(bench, taking, one))))));
        if (!rows.getChildren().equals(shown)) {
            rows.getChildren().setAll(shown);
        }
    }

    private Flow row(Bench bench, Taking taking, Portion portion) {
        int place = taking.portions().indexOf(portion);
        String tray = place == 0 ? bench.name(taking) : Texts.say("{0}, size {1}", bench.name(taking), place + 1);
        NumberField potted = new NumberField(Texts.say("really potted from {0}", tray));
        potted.valueProperty().bindBidirectional(portion.pottedProperty());
        NumberField lost = new NumberField(Texts.say("died or lost from {0}", tray));
        lost.valueProperty().bindBidirectional(portion.lostProperty());
        ObservableValue<Integer> taken = portion.takenProperty().map(number -> number.orElse(0));
        Label sum = Words.muted("");
        sum.textProperty().bind(taken.map(number -> Texts.say("of {0} taken", number)));
        Flow row = new Flow(
                whose(bench, taking, portion),
                Words.plain(Texts.say("really potted")),
                potted,
                Words.plain(Texts.say("died or lost while potting")),
                lost,
                sum);
        row.getStyleClass().add("outcome-row");
        return row;
    }

    private Node whose(Bench bench, Taking taking, Portion portion) {
        Label tray = Words.whole(Words.styled(bench.name(taking), "tray-code"));
        Label size = Words.muted("");
        size.textProperty()
                .bind(Bindings.createStringBinding(
                        () -> taking.portions().size() > 1
                                ? PottingWords.size(portion.potSize(
                                        model.form().potSizeProperty().get()))
                                : "",
                        portion.potSizeProperty(),
                        model.form().potSizeProperty()));
        size.managedProperty().bind(size.textProperty().isNotEmpty());
        VBox whose = new VBox(tray, size);
        whose.setAlignment(Pos.CENTER_LEFT);
        // Names of several broods' trays are long; those of one begin their lines alike.
        if (!bench.isOfSeveral()) {
            whose.getStyleClass().add("outcome-whose");
        }
        return whose;
    }
}
