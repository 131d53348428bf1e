package org.moultwright.ui.settings;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.moultwright.domain.Stage;
import org.moultwright.settings.Settings;
import org.moultwright.settings.Theme;
import org.moultwright.task.InlineRunner;
import org.moultwright.text.Vocabulary;

class SettingsViewModelTest {
    private final List<Settings> kept = new ArrayList<>();
    private final SettingsViewModel model = new SettingsViewModel(Settings.DEFAULT, kept::add, new InlineRunner());

    @Test
    void everyChangeIsKeptAtOnceAndOnlyOnce() {
        model.choose(Theme.DARK);
        model.choose(Theme.DARK);
        assertThat(kept).containsExactly(Settings.DEFAULT.withTheme(Theme.DARK));
    }

    @Test
    void theKeepersOwnWordStandsOverTheVocabulary() {
        model.choose(Vocabulary.SCIENTIFIC);
        model.label(Stage.INSTAR2, "Spiderling");
        assertThat(model.vocabularyProperty().get().label(Stage.INSTAR2)).isEqualTo("Spiderling");
        assertThat(model.vocabularyProperty().get().label(Stage.EGG)).isEqualTo("Embryo");
        assertThat(model.settingsProperty().get().labels()).isEqualTo(Map.of(Stage.INSTAR2, "Spiderling"));
    }

    @Test
    void aBlankWordGivesTheVocabularysBack() {
        model.label(Stage.INSTAR2, "Spiderling");
        model.label(Stage.INSTAR2, " ");
        assertThat(model.vocabularyProperty().get().label(Stage.INSTAR2)).isEqualTo("Sling");
    }

    @Test
    void aChoiceThatCannotBeKeptHoldsAndSaysSo() {
        SettingsViewModel unkept = new SettingsViewModel(
                Settings.DEFAULT,
                settings -> {
                    throw new UncheckedIOException(new IOException("the disk is full"));
                },
                new InlineRunner());
        unkept.choose(Theme.DARK);
        assertThat(unkept.settingsProperty().get().theme()).isEqualTo(Theme.DARK);
        assertThat(unkept.problemProperty().get()).contains("the disk is full").doesNotContain("Exception");
    }
}
