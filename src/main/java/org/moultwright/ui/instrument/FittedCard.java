package org.moultwright.ui.instrument;

import java.util.Optional;
import javafx.beans.value.ObservableObjectValue;
import javafx.scene.control.Label;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.moultwright.domain.Calibration;
import org.moultwright.domain.CalibrationPoint;
import org.moultwright.domain.Quantity;
import org.moultwright.language.Texts;
import org.moultwright.ui.chart.CorrectionChart;
import org.moultwright.ui.control.Words;
import org.moultwright.ui.theme.Palette;

/** What the points come to: the correction, its picture, what it takes the place of and what it changes. */
final class FittedCard extends VBox {
    private final CalibrationViewModel model;
    private final Label headline = Words.wrapped(Words.styled("", "verdict"));
    private final Label line = Words.wrapped(Words.caption(""));
    private final CorrectionChart chart;
    private final VBox residuals = new VBox();
    private final Label superseded = Words.wrapped(Words.plain(""));

    FittedCard(CalibrationViewModel model, ObservableObjectValue<Palette> palette) {
        this.model = model;
        this.chart = new CorrectionChart(palette);
        Label redressed = Words.wrapped(Words.strong(""));
        redressed.textProperty().bind(model.redressedProperty());
        VBox.setVgrow(chart, Priority.ALWAYS);
        VBox before = new VBox(Words.strong(Texts.say("Found out before")));
        model.history().forEach(words -> before.getChildren().add(Words.wrapped(Words.caption(words))));
        before.setVisible(!model.history().isEmpty());
        before.setManaged(before.isVisible());
        for (Label label : new Label[] {headline, line, superseded, redressed}) {
            label.managedProperty().bind(label.textProperty().isNotEmpty());
        }
        getStyleClass().addAll("card", "fitted-card");
        getChildren()
                .addAll(
                        Words.cardTitle(Texts.say("What it comes to")),
                        headline,
                        line,
                        chart,
                        residuals,
                        superseded,
                        redressed,
                        before);
        model.draftProperty().addListener((observed, was, now) -> show());
        model.missingProperty().addListener((observed, was, now) -> show());
        show();
    }

    private void show() {
        Optional<Calibration> draft = model.draftProperty().get();
        headline.setText(draft.map(CalibrationWords::headline)
                .orElse(model.missingProperty().get()));
        Words.restyle(headline, draft.isPresent() ? "verdict" : "muted");
        line.setText(draft.map(CalibrationWords::line).orElse(""));
        superseded.setText(model.superseded());
        chart.shownProperty().set(draft.map(FittedCard::shown));
        residuals.getChildren().clear();
        draft.ifPresent(found -> {
            for (CalibrationPoint point : found.points()) {
                residuals.getChildren().add(Words.wrapped(Words.caption(CalibrationWords.residual(point, found))));
            }
        });
    }

    private static CorrectionChart.Shown shown(Calibration found) {
        Quantity quantity = found.method().quantity();
        return new CorrectionChart.Shown(
                quantity,
                CalibrationWords.unit(quantity),
                CalibrationWords.usual(quantity),
                found.points(),
                found.correction());
    }
}
