package org.moultwright.ui.shell;

import java.util.List;
import javafx.css.PseudoClass;
import javafx.scene.Node;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.kordamp.ikonli.javafx.FontIcon;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.ChoiceGroup;
import org.moultwright.ui.control.Em;
import org.moultwright.ui.control.FirstScene;

/**
 * The screens down the left side, an icon over a word each; the keeper's choices stand at the foot. Where the words
 * have no room the icons stand alone, and the word is in the tooltip.
 */
final class RailView extends VBox {
    private static final PseudoClass ICONS_ONLY = PseudoClass.getPseudoClass("icons-only");

    /** How high a button with its word is, and what stands above and below them all, as the style sheet has them. */
    private static final double BUTTON_EMS = 4.4;

    private static final double EDGES_EMS = 4.6;

    /** Words take a twelfth of a window this wide. */
    private static final double NARROW_EMS = 64;

    private static final double ICON_EMS = 1.6;

    private final Em type = new Em();
    private final ChoiceGroup<String> group;

    RailView(ShellViewModel model, List<Screen> screens, Screen foot) {
        this.group = new ChoiceGroup<>(model.currentProperty(), model.currentProperty()::set);
        getStyleClass().add("rail");
        FirstScene.of(this, () -> fill(screens, foot));
    }

    private void fill(List<Screen> screens, Screen foot) {
        for (int i = 0; i < screens.size(); i++) {
            getChildren().add(button(screens.get(i), ShellKeys.nameOf(i)));
        }
        Region gap = new Region();
        setVgrow(gap, Priority.ALWAYS);
        getChildren().addAll(gap, button(foot, ShellKeys.SETTINGS_NAME), type);
        heightProperty().addListener(changed -> measure());
        type.fontProperty().addListener(changed -> measure());
        getScene().widthProperty().addListener(changed -> measure());
    }

    /** The keyboard stands on the word of the screen that is open, for a page with nothing on it to take it. */
    void takeFocus() {
        getChildren().stream()
                .filter(child -> child instanceof ToggleButton button && button.isSelected())
                .findFirst()
                .ifPresent(Node::requestFocus);
    }

    private void measure() {
        long buttons =
                getChildren().stream().filter(ToggleButton.class::isInstance).count();
        boolean isLow = getHeight() < (buttons * BUTTON_EMS + EDGES_EMS) * type.pixels();
        boolean isNarrow = getScene() != null && getScene().getWidth() < NARROW_EMS * type.pixels();
        boolean hasNoRoom = getHeight() > 0 && (isLow || isNarrow);
        pseudoClassStateChanged(ICONS_ONLY, hasNoRoom);
        for (var child : getChildren()) {
            if (child instanceof ToggleButton button) {
                button.setContentDisplay(hasNoRoom ? ContentDisplay.GRAPHIC_ONLY : ContentDisplay.TOP);
            }
        }
    }

    private ToggleButton button(Screen screen, String keys) {
        FontIcon icon = FontIcon.of(screen.name().icon());
        // Not in the style sheet: there an em of an icon is its own size.
        icon.iconSizeProperty().bind(type.times(ICON_EMS));
        ToggleButton button = new ToggleButton(screen.name().word(), icon);
        button.getStyleClass().setAll("rail-button");
        button.setContentDisplay(ContentDisplay.TOP);
        button.setAccessibleText(screen.name().word());
        // A tooltip is a window of its own, which nobody asks for before pointing here.
        button.setOnMouseEntered(event -> button.setTooltip(
                new Tooltip(Texts.say("{0}, {1}", screen.name().word(), keys))));
        button.setMaxWidth(Double.MAX_VALUE);
        group.add(button, screen.name().id());
        return button;
    }
}
