package org.moultwright.ui.settings;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javafx.event.ActionEvent;
import javafx.scene.Scene;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextField;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.moultwright.domain.AlarmLimits;
import org.moultwright.language.Numbers;
import org.moultwright.settings.Settings;
import org.moultwright.task.InlineRunner;
import org.moultwright.ui.control.Typed;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;

@ExtendWith(ApplicationExtension.class)
class AlarmsCardUiTest {
    private static final String NOT_KEPT = "Not kept: write four temperatures, each below the one above it.";

    private final List<Settings> kept = new ArrayList<>();

    @Test
    void theFieldToBeMendedIsMarkedUntilItIs(FxRobot robot) {
        robot.interact(() -> {
            AlarmsCard card = new AlarmsCard(new SettingsViewModel(Settings.DEFAULT, kept::add, new InlineRunner()));
            new Scene(card);
            TextField high = field(card, "too warm above");
            String usual = high.getText();
            write(high, "99");
            assertThat(kept).isEmpty();
            assertThat(high.getAccessibleHelp()).isEqualTo(NOT_KEPT);
            assertThat(high.getParent().getStyleClass()).contains("has-problem");
            assertThat(field(card, "too cool below").getAccessibleHelp()).isEmpty();
            assertThat(said(card)).contains(NOT_KEPT);

            write(high, "");
            assertThat(high.getAccessibleHelp()).isEqualTo(NOT_KEPT);

            high.replaceSelection("warm");
            assertThat(high.getAccessibleHelp()).isEqualTo("Only a number, such as 1.5.");

            write(high, " ٢٩,٥ ");
            assertThat(kept)
                    .singleElement()
                    .satisfies(settings ->
                            assertThat(settings.alarms().limits().highCelsius()).isEqualTo(29.5));
            assertThat(high.getParent().getStyleClass()).doesNotContain("has-problem");
            assertThat(said(card)).doesNotContain(NOT_KEPT);
            write(high, usual);
            assertThat(kept.get(1).alarms()).isEqualTo(Settings.DEFAULT.alarms());
        });
    }

    /** A keeper who leaves out what stands behind the point, or before it, has written a temperature all the same. */
    @Test
    void aPointAtTheEndIsLeftOut(FxRobot robot) {
        robot.interact(() -> {
            AlarmsCard card = new AlarmsCard(new SettingsViewModel(Settings.DEFAULT, kept::add, new InlineRunner()));
            new Scene(card);
            TextField high = field(card, "too warm above");
            for (String typed : List.of("29.", "29,", "٢٩٫")) {
                kept.clear();
                write(high, "28.5");
                write(high, typed);
                assertThat(high.getAccessibleHelp()).as(typed).isEmpty();
                assertThat(kept.get(1).alarms().limits().highCelsius())
                        .as(typed)
                        .isEqualTo(29);
            }
        });
    }

    /** A field that refused what stands in it would be empty, and its limit gone. */
    @Test
    void aLimitStandsInItsFieldInTheFiguresOfThePlace(FxRobot robot) {
        Settings warmer = Settings.DEFAULT.withAlarms(
                Settings.DEFAULT.alarms().withLimits(new AlarmLimits(20.5, 24.5, 29.5, 32.5)));
        Numbers.use(Locale.forLanguageTag("fa-IR"));
        try {
            robot.interact(() -> {
                AlarmsCard card = new AlarmsCard(new SettingsViewModel(warmer, kept::add, new InlineRunner()));
                assertThat(Typed.number(field(card, "too warm above").getText()))
                        .hasValue(29.5);
            });
        } finally {
            Numbers.use(Locale.ROOT);
        }
    }

    private static void write(TextField field, String text) {
        field.selectAll();
        field.replaceSelection(text);
        field.fireEvent(new ActionEvent());
    }

    private static TextField field(AlarmsCard card, String name) {
        return card.lookupAll(".text-field").stream()
                .map(TextField.class::cast)
                .filter(field -> field.getAccessibleText().startsWith(name))
                .findFirst()
                .orElseThrow();
    }

    private static List<String> said(AlarmsCard card) {
        return card.lookupAll(".wording").stream()
                .filter(node -> node.isManaged())
                .map(node -> ((Labeled) node).getText())
                .toList();
    }
}
