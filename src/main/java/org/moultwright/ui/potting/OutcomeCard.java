package org.moultwright.ui.potting;

import javafx.beans.value.ObservableValue;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.Banner;
import org.moultwright.ui.control.Flow;
import org.moultwright.ui.control.NumberField;
import org.moultwright.ui.control.Tone;
import org.moultwright.ui.control.Words;

/** What became of the animals taken, tray by tray, and the balance of all. */
final class OutcomeCard extends VBox {
    private final VBox rows = new VBox();
    private final Banner balance = new Banner(Tone.ACCENT);
    private final PottingViewModel model;

    OutcomeCard(PottingViewModel model) {
        this.model = model;
        rows.getStyleClass().add("outcome-rows");
        getStyleClass().add("card");
        getChildren().addAll(Words.cardTitle(Texts.say("When they are in")), rows, balance);
        model.benchProperty().addListener((observed, before, now) -> showRows());
        model.sumsProperty().addListener((observed, before, now) -> showBalance(now));
        showRows();
        showBalance(model.sumsProperty().get());
    }

    private void showRows() {
        rows.getChildren().clear();
        model.benchProperty()
                .get()
                .ifPresent(bench ->
                        bench.takings().forEach(taking -> rows.getChildren().add(row(taking))));
    }

    private static HBox row(Taking taking) {
        String tray = taking.tray().tray();
        NumberField potted = new NumberField(Texts.say("really potted from {0}", tray));
        potted.valueProperty().bindBidirectional(taking.pottedProperty());
        NumberField lost = new NumberField(Texts.say("died or lost from {0}", tray));
        lost.valueProperty().bindBidirectional(taking.lostProperty());
        ObservableValue<Integer> taken = taking.takenProperty().map(number -> number.orElse(0));
        Label sum = Words.muted("");
        sum.textProperty().bind(taken.map(number -> Texts.say("of {0} taken", number)));
        Flow row = new Flow(
                Words.styled(tray, "tray-code"),
                Words.plain(Texts.say("really potted")),
                potted,
                Words.plain(Texts.say("died or lost while potting")),
                lost,
                sum);
        row.getStyleClass().add("outcome-row");
        row.managedProperty().bind(taken.map(number -> number > 0));
        row.visibleProperty().bind(row.managedProperty());
        return row;
    }

    private void showBalance(BenchSums sums) {
        balance.setTone(sums.addsUp() ? Tone.ACCENT : Tone.WARN);
        balance.sentenceProperty().set(PottingWords.balance(sums.taken(), sums.potted(), sums.lost()));
        balance.detailProperty().set(sums.detail());
    }
}
