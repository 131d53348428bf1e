package org.moultwright.ui.settings;

import java.util.List;
import java.util.function.UnaryOperator;
import javafx.scene.layout.VBox;
import org.moultwright.settings.Settings;
import org.moultwright.settings.TextSize;
import org.moultwright.settings.Theme;
import org.moultwright.ui.alarm.AlarmReach;
import org.moultwright.ui.control.Banner;
import org.moultwright.ui.control.Card;
import org.moultwright.ui.control.PageHeader;
import org.moultwright.ui.control.Tone;
import org.moultwright.ui.control.Words;

/** Lays out the keeper's choices. Each takes effect and is kept as it is made. */
public final class SettingsView extends VBox {
    /**
     * @param reach tries the tone and the notice of alarms
     * @param tryCommand runs a command for alarms once and says how it ended
     */
    public SettingsView(SettingsViewModel model, AlarmReach reach, UnaryOperator<String> tryCommand) {
        PageHeader header = new PageHeader("Settings");
        header.subtitleProperty().set("kept as you choose");
        Banner problem = new Banner(Tone.BAD);
        problem.sentenceProperty().bind(model.problemProperty());
        ChoiceRow<Theme> themes = new ChoiceRow<>(
                List.of(Theme.values()),
                theme -> theme == Theme.LIGHT ? "Light" : "Dark",
                model.settingsProperty().map(Settings::theme),
                model::choose);
        ChoiceRow<TextSize> sizes = new ChoiceRow<>(
                List.of(TextSize.values()),
                SettingsView::word,
                model.settingsProperty().map(Settings::textSize),
                model::choose);
        getStyleClass().add("page");
        getChildren()
                .addAll(
                        header,
                        problem,
                        Card.titled("Look", Words.caption("theme"), themes, Words.caption("text"), sizes),
                        new PhotoFolderCard(model),
                        new AlarmsCard(model),
                        new AlarmReachCard(model, reach),
                        new AlarmCommandCard(model, tryCommand),
                        new LabelsCard(model));
    }

    private static String word(TextSize size) {
        return switch (size) {
            case NORMAL -> "Normal";
            case LARGE -> "Large";
            case LARGER -> "Larger";
        };
    }
}
