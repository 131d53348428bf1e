package org.moultwright.ui.control;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import javafx.event.Event;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.TextArea;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.moultwright.ui.ToolkitThread;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** A form with a count in it that may not be what was meant, and all that would take it. */
@ExtendWith(ApplicationExtension.class)
class HeldOnceUiTest {
    private final AtomicInteger taken = new AtomicInteger();
    private final AtomicInteger left = new AtomicInteger();
    private NumberField count;
    private EntryField code;
    private TextArea note;
    private Button keep;
    private Button keepAndOpen;
    private Button back;
    private StackPane floor;
    private VBox form;

    @Start
    void start(javafx.stage.Stage stage) {
        count = new NumberField("eggs counted");
        code = new EntryField("code", Typable.words(10));
        note = new TextArea();
        keep = Buttons.primary("Keep", taken::incrementAndGet);
        keepAndOpen = Buttons.taking("Keep, and open it", taken::incrementAndGet);
        back = Buttons.secondary("Back", left::incrementAndGet);
        form = new VBox(count, code, note, keep, keepAndOpen, back);
        form.addEventFilter(KeyEvent.KEY_PRESSED, event -> {
            if (event.getCode() == KeyCode.ENTER && event.isShortcutDown()) {
                taken.incrementAndGet();
            } else if (event.getCode() == KeyCode.ENTER && event.getTarget() == code.input()) {
                taken.incrementAndGet();
            }
        });
        floor = new StackPane(form);
        stage.setScene(new Scene(floor, 400, 400));
        stage.show();
    }

    @Test
    void whateverTakesTheFormIsHeldOnceAndThenGoesThrough() {
        List<Runnable> ways = List.of(
                () -> click(keep),
                () -> click(keepAndOpen),
                () -> enter(count.input(), true),
                () -> enter(note, true),
                () -> enter(code.input(), false));
        for (Runnable way : ways) {
            ToolkitThread.run(() -> {
                taken.set(0);
                doubt();
                way.run();
                assertThat(taken).as("held").hasValue(0);
                assertThat(count.input().isFocused()).isTrue();
                assertThat(count.input().getAccessibleHelp()).isEqualTo("Only a whole number up to 99999.");
                assertThat(count.textProperty().get()).isEqualTo("15");
                way.run();
                assertThat(taken).as("let through").hasValue(1);
            });
        }
    }

    @Test
    void whatOnlyLeavesIsNotHeld() {
        ToolkitThread.run(() -> {
            doubt();
            click(back);
            assertThat(left).hasValue(1);
            enter(note, false);
            click(keep);
            assertThat(taken)
                    .as("an Enter that is a line of a note has told nobody")
                    .hasValue(0);
        });
    }

    @Test
    void whatIsWrittenAnewHoldsNothing() {
        ToolkitThread.run(() -> {
            doubt();
            count.textProperty().set("16");
            click(keep);
            assertThat(taken).hasValue(1);
        });
    }

    @Test
    void aFieldThatCannotBeSeenHoldsNothingAndHoldsAgainWhenItCan() {
        ToolkitThread.run(() -> {
            doubt();
            code.input().requestFocus();
            count.setVisible(false);
            click(keep);
            assertThat(taken).as("hidden").hasValue(1);
            count.setVisible(true);
            form.getChildren().remove(count);
            click(keep);
            assertThat(taken).as("taken out").hasValue(2);
            form.getChildren().add(count);
            click(keep);
            assertThat(taken).as("there again").hasValue(2);
        });
    }

    /** 1.5 as it is typed, of which 15 is taken. */
    private void doubt() {
        count.input().requestFocus();
        count.input().clear();
        for (String sign : List.of("1", ".", "5")) {
            count.input().appendText(sign);
        }
    }

    private static void click(Button button) {
        button.requestFocus();
        button.fire();
    }

    private static void enter(Node target, boolean withControl) {
        target.requestFocus();
        Event.fireEvent(
                target, new KeyEvent(KeyEvent.KEY_PRESSED, "", "", KeyCode.ENTER, false, withControl, false, false));
    }
}
