package org.moultwright.ui.shell;

import java.util.List;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.kordamp.ikonli.javafx.FontIcon;
import org.moultwright.ui.control.ChoiceGroup;

/** The screens down the left side, an icon over a word each; the keeper's choices stand at the foot. */
final class RailView extends VBox {
    private final ChoiceGroup<String> group;

    RailView(ShellViewModel model, List<Screen> screens, Screen foot) {
        this.group = new ChoiceGroup<>(model.currentProperty(), model.currentProperty()::set);
        getStyleClass().add("rail");
        for (int i = 0; i < screens.size(); i++) {
            getChildren().add(button(screens.get(i), ShellKeys.nameOf(i)));
        }
        Region gap = new Region();
        setVgrow(gap, Priority.ALWAYS);
        getChildren().addAll(gap, button(foot, ShellKeys.SETTINGS_NAME));
    }

    private ToggleButton button(Screen screen, String keys) {
        ToggleButton button =
                new ToggleButton(screen.name().word(), FontIcon.of(screen.name().icon()));
        button.getStyleClass().setAll("rail-button");
        button.setContentDisplay(ContentDisplay.TOP);
        button.setAccessibleText(screen.name().word());
        // A tooltip is a window of its own, which nobody asks for before pointing here.
        button.setOnMouseEntered(event -> button.setTooltip(new Tooltip(keys)));
        button.setMaxWidth(Double.MAX_VALUE);
        group.add(button, screen.name().id());
        return button;
    }
}
