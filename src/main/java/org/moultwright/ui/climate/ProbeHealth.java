package org.moultwright.ui.climate;

import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.Buttons;
import org.moultwright.ui.control.Flow;
import org.moultwright.ui.control.Scrolled;
import org.moultwright.ui.control.Words;

/** How far the chosen probe can be trusted: its calibrations, its silences, its bad readings. */
final class ProbeHealth extends VBox {
    private final ClimateViewModel model;
    private final Label name = Words.strong("");
    private final VBox standing = new VBox();

    ProbeHealth(ClimateViewModel model, Runnable calibrate) {
        this.model = model;
        Label health = Words.wrapped(Words.plain(""));
        health.textProperty().bind(model.factsProperty().map(ProbeFacts::health));
        VBox words = new VBox(standing, health);
        words.getStyleClass().add("lines");
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        Flow head = new Flow(name, gap, Buttons.plain(Texts.say("Calibrate"), calibrate));
        head.getStyleClass().add("line");
        getStyleClass().add("lines");
        getChildren().addAll(head, new Scrolled(Texts.say("how far the probe can be trusted"), words));
        model.chosenProperty().addListener((observed, before, now) -> show());
        model.calibrationsProperty().addListener((observed, before, now) -> show());
        show();
    }

    private void show() {
        name.setText(Texts.say("Probe {0}", model.chosenProperty().get()));
        standing.getChildren()
                .setAll(model.standing().stream()
                        .map(one -> Words.wrapped(Words.styled(one.words(), one.isExpired() ? "warn" : "plain")))
                        .toList());
    }
}
