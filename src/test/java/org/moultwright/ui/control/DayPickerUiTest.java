package org.moultwright.ui.control;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Locale;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** On a machine that speaks another language a day is written, and read, as everywhere on the desk. */
@ExtendWith(ApplicationExtension.class)
class DayPickerUiTest {
    private static final Locale MACHINE = Locale.getDefault();

    private final ObjectProperty<@Nullable LocalDate> day = new SimpleObjectProperty<>();
    private DayPicker picker;

    @Start
    void start(Stage stage) {
        Locale.setDefault(Locale.GERMANY);
        picker = new DayPicker("day", day);
        stage.setScene(new Scene(picker));
        stage.show();
    }

    @AfterEach
    void restore() {
        Locale.setDefault(MACHINE);
    }

    @ParameterizedTest
    @ValueSource(strings = {"12 May 2026", "12 may 2026", "12.5.2026", "12/5/2026", "2026-05-12"})
    void isWrittenInOneWayAndReadInSeveral(String typed, FxRobot robot) {
        robot.interact(() -> {
            picker.takeFocus();
            picker.input().getEditor().setText(typed);
        });
        robot.type(KeyCode.ENTER);
        assertThat(day.get()).isEqualTo(LocalDate.of(2026, 5, 12));
        assertThat(picker.input().getEditor().getText()).isEqualTo("12 May 2026");
    }

    /** What was typed is named, for the day that stands there again is another. */
    @ParameterizedTest
    @ValueSource(strings = {"soon", "31.2.2026", "31 Feb 2026", "31 February 2026", "5 Mai 2026"})
    void whatIsNoDayIsSaidSoOfAndLeavesTheDayAsItWas(String typed, FxRobot robot) {
        robot.interact(() -> day.set(LocalDate.of(2026, 5, 3)));
        commit(typed, robot);
        assertThat(day.get()).isEqualTo(LocalDate.of(2026, 5, 3));
        assertThat(picker.input().getEditor().getText()).isEqualTo("3 May 2026");
        assertThat(picker.input().getEditor().getAccessibleHelp())
                .isEqualTo("'" + typed + "' is no day. Write 3 May 2026, or 2026-05-03.");
        assertThat(picker.lookupAll(".problem")).hasSize(1);

        commit("12.5.2026", robot);
        assertThat(picker.input().getEditor().getAccessibleHelp()).isEmpty();
        assertThat(picker.getStyleClass()).doesNotContain("has-problem");
    }

    @Test
    void whereThereWasNoDayThereIsNoneAndThatIsSaid(FxRobot robot) {
        commit("15.5.", robot);
        assertThat(day.get()).isNull();
        assertThat(picker.getStyleClass()).contains("has-problem");
        robot.type(KeyCode.DIGIT1);
        assertThat(picker.getStyleClass()).as("while it is mended").doesNotContain("has-problem");
    }

    @Test
    void aPageOfLettersIsNamedByItsFirst(FxRobot robot) {
        commit("x".repeat(500), robot);
        assertThat(picker.input().getEditor().getAccessibleHelp()).startsWith("'" + "x".repeat(20) + "…' is no day.");
    }

    @Test
    void aDayAfterTheLastIsNotTaken(FxRobot robot) {
        LocalDate last = LocalDate.of(2026, 5, 3);
        robot.interact(() -> picker.upTo(() -> last));
        commit("4 May 2026", robot);
        assertThat(day.get()).isNull();
        assertThat(picker.input().getEditor().getAccessibleHelp())
                .isEqualTo("That day is yet to come. Choose today or an earlier one.");
        commit("3 May 2026", robot);
        assertThat(day.get()).isEqualTo(last);
        assertThat(picker.input().getEditor().getAccessibleHelp()).isEmpty();
    }

    private void commit(String typed, FxRobot robot) {
        robot.interact(() -> {
            picker.takeFocus();
            picker.input().getEditor().setText(typed);
        });
        robot.type(KeyCode.ENTER);
    }
}
