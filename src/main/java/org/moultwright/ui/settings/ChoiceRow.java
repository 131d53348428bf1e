package org.moultwright.ui.settings;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.beans.value.ObservableValue;
import javafx.scene.layout.FlowPane;
import org.moultwright.ui.control.ToggleChip;

/** A few words of which exactly one is chosen. */
final class ChoiceRow<T> extends FlowPane {
    ChoiceRow(List<T> all, Function<T, String> word, ObservableValue<T> chosen, Consumer<T> choose) {
        getStyleClass().add("chips");
        for (T option : all) {
            ToggleChip chip = new ToggleChip(word.apply(option));
            Runnable show = () -> chip.setSelected(option.equals(chosen.getValue()));
            chip.setOnAction(event -> {
                choose.accept(option);
                show.run();
            });
            chosen.addListener((observed, before, now) -> show.run());
            show.run();
            getChildren().add(chip);
        }
    }
}
