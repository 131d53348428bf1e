package org.moultwright.ui.control;

import static org.assertj.core.api.Assertions.assertThat;

import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** Where the keyboard is after a press in what is scrolled. */
@ExtendWith(ApplicationExtension.class)
class ScrolledUiTest {
    private TextField field;
    private Label beside;
    private Label words;
    private Label few;
    private Scrolled text;

    @Start
    void start(Stage stage) {
        field = new TextField();
        beside = new Label("beside the fields");
        words = new Label("many words");
        few = new Label("few words");
        text = new Scrolled("words", new VBox(words, high()));
        Scrolled form = new Scrolled(new VBox(field, beside, high()));
        stage.setScene(new Scene(new VBox(form, text, new Scrolled("few", new VBox(few))), 400, 600));
        stage.show();
    }

    @Test
    void aPressBesideAFieldLeavesItTheKeyboard(FxRobot robot) {
        robot.clickOn(field).clickOn(beside);
        assertThat(field.isFocused()).isTrue();
        robot.type(KeyCode.A);
        assertThat(field.getText()).isEqualTo("a");
        robot.clickOn(few);
        assertThat(field.isFocused()).as("beside words that all are in sight").isTrue();
    }

    @Test
    void aPressOnWordsHigherThanTheirRoomLetsKeysMoveThem(FxRobot robot) {
        robot.clickOn(field).clickOn(words);
        assertThat(text.isFocused()).isTrue();
        robot.type(KeyCode.END);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(text.getVvalue()).isEqualTo(1);
    }

    private static Region high() {
        Region high = new Region();
        high.setMinHeight(900);
        return high;
    }
}
