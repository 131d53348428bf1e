package org.moultwright.ui.shell;

import java.util.List;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.Toggle;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.kordamp.ikonli.javafx.FontIcon;

/** The screens down the left side, an icon over a word each; the keeper's choices stand at the foot. */
final class RailView extends VBox {
    private final ToggleGroup group = new ToggleGroup();
    private final ShellViewModel model;

    RailView(ShellViewModel model, List<Screen> screens, Screen foot) {
        this.model = model;
        getStyleClass().add("rail");
        for (int i = 0; i < screens.size(); i++) {
            getChildren().add(button(screens.get(i), ShellKeys.nameOf(i)));
        }
        Region gap = new Region();
        setVgrow(gap, Priority.ALWAYS);
        getChildren().addAll(gap, button(foot, ShellKeys.SETTINGS_NAME));
        model.currentProperty().addListener((observed, before, now) -> select(now));
        select(model.currentProperty().get());
    }

    private ToggleButton button(Screen screen, String keys) {
        ToggleButton button = new ToggleButton(screen.word(), FontIcon.of(screen.icon()));
        button.getStyleClass().setAll("rail-button");
        button.setContentDisplay(ContentDisplay.TOP);
        button.setUserData(screen.id());
        button.setToggleGroup(group);
        button.setAccessibleText(screen.word());
        button.setTooltip(new Tooltip(keys));
        button.setMaxWidth(Double.MAX_VALUE);
        button.setOnAction(event -> {
            model.currentProperty().set(screen.id());
            button.setSelected(true);
        });
        return button;
    }

    private void select(String id) {
        group.getToggles().stream()
                .filter(toggle -> id.equals(toggle.getUserData()))
                .findFirst()
                .ifPresent(this::selectToggle);
    }

    private void selectToggle(Toggle toggle) {
        group.selectToggle(toggle);
    }
}
