package org.moultwright.ui.settings;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.beans.value.ObservableValue;
import javafx.scene.layout.FlowPane;
import org.moultwright.ui.control.ChoiceGroup;
import org.moultwright.ui.control.ToggleChip;

/** A few words of which exactly one is chosen. */
final class ChoiceRow<T> extends FlowPane {
    ChoiceRow(List<T> all, Function<T, String> word, ObservableValue<T> chosen, Consumer<T> choose) {
        getStyleClass().add("chips");
        ChoiceGroup<T> group = new ChoiceGroup<>(chosen, choose);
        for (T option : all) {
            ToggleChip chip = new ToggleChip(word.apply(option));
            group.add(chip, option);
            getChildren().add(chip);
        }
    }
}
