package org.moultwright.ui.climate;

import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.Node;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.ChoiceGroup;
import org.moultwright.ui.control.Flow;
import org.moultwright.ui.control.ToggleChip;

/** What is known beside the readings: the probe itself, or the alarm journal. */
final class SideCard extends VBox {
    private enum Part {
        PROBE,
        ALARMS
    }

    private final ObjectProperty<Part> shown = new SimpleObjectProperty<>(Part.PROBE);
    private final Flow chips = new Flow();
    private final ChoiceGroup<Part> group = new ChoiceGroup<>(shown, shown::set);
    private final StackPane parts = new StackPane();

    SideCard(ClimateViewModel model, TracesPage.Ways ways) {
        chips.getStyleClass().add("span-chips");
        add(Part.PROBE, Texts.say("This probe"), new ProbeHealth(model, ways.calibrate()));
        add(Part.ALARMS, Texts.say("Alarms of the last 30 days"), new JournalList(model.journal()));
        VBox.setVgrow(parts, Priority.ALWAYS);
        getStyleClass().addAll("card", "side-card");
        getChildren().addAll(chips, parts);
    }

    private void add(Part part, String word, Node content) {
        ToggleChip chip = new ToggleChip(word);
        chip.getStyleClass().add("small-chip");
        group.add(chip, part);
        chips.getChildren().add(chip);
        content.visibleProperty().bind(shown.isEqualTo(part));
        parts.getChildren().add(content);
    }
}
