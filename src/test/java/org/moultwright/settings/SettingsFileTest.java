package org.moultwright.settings;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.moultwright.domain.ColdestWall;
import org.moultwright.domain.Stage;
import org.moultwright.domain.label.LabelDesign;
import org.moultwright.domain.label.LabelPart;
import org.moultwright.domain.label.LabelSheets;
import org.moultwright.domain.label.LabelStack;
import org.moultwright.domain.label.Paper;
import org.moultwright.domain.label.PrintShift;
import org.moultwright.language.TemperatureUnit;

class SettingsFileTest {
    @TempDir
    private Path folder;

    private SettingsFile file() {
        return new SettingsFile(path());
    }

    private Path path() {
        return folder.resolve("settings.txt");
    }

    @Test
    void withoutAFileTheDefaultsHold() {
        assertThat(file().load().settings()).isEqualTo(Settings.DEFAULT);
        assertThat(path()).doesNotExist();
    }

    @Test
    void whatIsSavedIsReadAgain() {
        Settings chosen = Settings.DEFAULT
                .withTheme(Theme.DARK)
                .withTextSize(TextSize.LARGER)
                .withVocabulary("scientific")
                .withPlans(new PlanSettings(9, 0, "+00 12 = 34", Paper.LETTER))
                .withLabels(Map.of(Stage.INSTAR2, "Spiderling = free, größer"))
                .withAlarms(Settings.DEFAULT.alarms().noticed(false))
                .withDesk(DeskSettings.DEFAULT
                        .withLabelDesign(LabelDesign.STANDARD
                                .with(LabelPart.SQUARE, false)
                                .withOwnWords("room 2, = back"))
                        .withLabelStack(new LabelStack(LabelSheets.A4_3X8, 5, new PrintShift(0.4, -1.5))))
                .withPlace(new PlaceSettings("de", "en-US", Optional.of(TemperatureUnit.FAHRENHEIT)))
                .withWalls(Map.of("box 1", ColdestWall.below(1.5, 1), "box 2", ColdestWall.measuredBy("P-3")));
        file().save(chosen);
        assertThat(file().load()).isEqualTo(new SettingsFile.Loaded(chosen, Optional.empty()));
        assertThat(file().glance()).isEqualTo(chosen);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "theme = purple",
                "no equals sign",
                "label.egg =",
                "unknown = 1",
                "wall.box 1 = cold",
                "delivery-days-pots = soon",
                "delivery-days-food = 900",
                "sitter-paper = b5",
                "label-parts = square,photo",
                "label-stack = 210 297",
                "\0\1\2\3"
            })
    void aFileNotUnderstoodIsKeptAsideAsItWas(String text) throws IOException {
        Files.writeString(path(), text);
        SettingsFile.Loaded loaded = file().load();
        assertThat(loaded.settings()).isEqualTo(Settings.DEFAULT);
        assertThat(loaded.keptAside())
                .hasValueSatisfying(aside -> assertThat(aside).hasContent(text));
        assertThat(path()).doesNotExist();
    }

    @Test
    void aSecondOneDoesNotReplaceTheFirst() throws IOException {
        Files.writeString(path(), "first");
        Path first = file().load().keptAside().orElseThrow();
        Files.writeString(path(), "second");
        Path second = file().load().keptAside().orElseThrow();
        assertThat(first).hasContent("first");
        assertThat(second).hasContent("second");
    }
}
