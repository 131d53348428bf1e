package org.moultwright.ui.forecast;

import javafx.beans.property.ObjectProperty;
import javafx.scene.layout.HBox;
import org.moultwright.compute.plan.Safety;
import org.moultwright.language.Texts;
import org.moultwright.text.ChanceWords;
import org.moultwright.ui.control.ChoiceGroup;
import org.moultwright.ui.control.Flow;
import org.moultwright.ui.control.ToggleChip;
import org.moultwright.ui.control.Words;

/** The choice of how safe it shall be. */
final class SafetyChips {
    private SafetyChips() {}

    /** @param name what a screen reader says before the chance */
    static HBox of(String name, ObjectProperty<Safety> chosen) {
        Flow row = new Flow(Words.muted(Texts.say("safe to")));
        row.getStyleClass().add("card-head");
        ChoiceGroup<Safety> group = new ChoiceGroup<>(chosen, chosen::set);
        for (Safety safety : Safety.values()) {
            String percent = ChanceWords.percent(safety.chance());
            ToggleChip chip = new ToggleChip(percent);
            chip.setAccessibleText(Texts.say("{0} with a chance of {1}", name, percent));
            chip.getStyleClass().add("small-chip");
            group.add(chip, safety);
            row.getChildren().add(chip);
        }
        return row;
    }
}
