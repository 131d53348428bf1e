package org.moultwright.ui.control;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Consumer;
import javafx.beans.value.ObservableValue;
import javafx.scene.control.Toggle;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;

/**
 * Buttons of which one is on, or none while what is chosen has no button. The value chosen and the button that is on follow each other, whether
 * it was clicked, reached by an arrow key, or chosen elsewhere.
 */
public final class ChoiceGroup<T> {
    private final ToggleGroup group = new ToggleGroup();
    private final Map<Toggle, T> values = new LinkedHashMap<>();
    private final ObservableValue<T> chosen;

    /** @param choose is told what the keeper chooses */
    public ChoiceGroup(ObservableValue<T> chosen, Consumer<T> choose) {
        this.chosen = chosen;
        chosen.addListener((observed, before, now) -> mark());
        group.selectedToggleProperty().addListener((observed, before, now) -> {
            T value = values.get(now);
            if (value == null) {
                mark();
            } else {
                choose.accept(value);
            }
        });
    }

    /** Adds the button that stands for a value. */
    public void add(ToggleButton button, T value) {
        values.put(button, value);
        button.setToggleGroup(group);
        mark();
    }

    private void mark() {
        group.selectToggle(values.entrySet().stream()
                .filter(entry -> entry.getValue().equals(chosen.getValue()))
                .map(Map.Entry::getKey)
                .findFirst()
                .orElse(null));
    }
}
