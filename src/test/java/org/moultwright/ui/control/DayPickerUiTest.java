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
            picker.requestFocus();
            picker.getEditor().setText(typed);
        });
        robot.type(KeyCode.ENTER);
        assertThat(day.get()).isEqualTo(LocalDate.of(2026, 5, 12));
        assertThat(picker.getEditor().getText()).isEqualTo("12 May 2026");
    }

    @ParameterizedTest
    @ValueSource(strings = {"soon", "31.2.2026", "5 Mai 2026"})
    void whatIsNoDayLeavesTheDayAsItWas(String typed, FxRobot robot) {
        robot.interact(() -> {
            day.set(LocalDate.of(2026, 5, 3));
            picker.requestFocus();
            picker.getEditor().setText(typed);
        });
        robot.type(KeyCode.ENTER);
        assertThat(day.get()).isEqualTo(LocalDate.of(2026, 5, 3));
        assertThat(picker.getEditor().getText()).isEqualTo("3 May 2026");
    }
}
