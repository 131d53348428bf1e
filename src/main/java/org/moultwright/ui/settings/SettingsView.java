package org.moultwright.ui.settings;

import java.util.List;
import java.util.function.UnaryOperator;
import javafx.scene.layout.VBox;
import org.moultwright.language.Texts;
import org.moultwright.language.Translations;
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
     * @param translations the languages there are
     */
    public SettingsView(
            SettingsViewModel model, AlarmReach reach, UnaryOperator<String> tryCommand, Translations translations) {
        PageHeader header = new PageHeader(Texts.say("Settings"));
        header.subtitleProperty().set(Texts.say("kept as you choose"));
        Banner problem = new Banner(Tone.BAD);
        problem.sentenceProperty().bind(model.problemProperty());
        ChoiceRow<Theme> themes = new ChoiceRow<>(
                List.of(Theme.values()),
                theme -> theme == Theme.LIGHT ? Texts.say("Light") : Texts.say("Dark"),
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
                        Card.titled(
                                Texts.say("Look"),
                                Words.caption(Texts.say("theme")),
                                themes,
                                Words.caption(Texts.say("text")),
                                sizes),
                        new PlaceCard(model, translations),
                        new PhotoFolderCard(model),
                        new AlarmsCard(model),
                        new AlarmReachCard(model, reach),
                        new AlarmCommandCard(model, tryCommand),
                        new LabelsCard(model));
    }

    private static String word(TextSize size) {
        return switch (size) {
            case NORMAL -> Texts.say("Normal");
            case LARGE -> Texts.say("Large");
            case LARGER -> Texts.say("Larger");
            case LARGEST -> Texts.say("Largest");
        };
    }
}
