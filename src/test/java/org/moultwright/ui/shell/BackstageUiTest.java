package org.moultwright.ui.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.Pane;
import javafx.scene.layout.StackPane;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.moultwright.ui.control.Sign;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** Screens are styled and laid out before they are opened, in steps taken only while nothing is pressed. */
@ExtendWith(ApplicationExtension.class)
class BackstageUiTest {
    private static final int STEPS = 3;
    private static final int LONGEST_SECONDS = 20;

    private final List<Button> made = new ArrayList<>();
    private final Pane stage = new Pane();
    private final Pane wings = new Pane();

    @Start
    void start(Stage window) {
        window.setScene(new Scene(new StackPane(wings, stage), 300, 200));
        window.show();
    }

    @Test
    void makesEachScreenOnceAndLeavesItReady(FxRobot robot) {
        robot.interact(() -> {
            Backstage backstage = backstage(screen("one"), screen("two"));
            while (backstage.step()) {
                assertThat(made).hasSizeLessThanOrEqualTo(2).allMatch(button -> !isSeen(button));
            }
        });
        assertThat(made).extracting(Button::getText).containsExactly("one", "two");
        assertThat(made).allSatisfy(button -> {
            assertThat(button.getSkin()).isNotNull();
            assertThat(button.getWidth()).isPositive();
            assertThat(button.getParent()).isNull();
        });
        assertThat(wings.getChildren()).isEmpty();
    }

    @Test
    void aScreenOpenedMeanwhileStaysOpen(FxRobot robot) {
        Screen screen = screen("one");
        robot.interact(() -> {
            Backstage backstage = backstage(screen);
            assertThat(backstage.step()).isTrue();
            stage.getChildren().setAll(screen.node());
            while (backstage.step()) {
                assertThat(screen.node().getParent()).isSameAs(stage);
            }
        });
        assertThat(screen.node().getParent()).isSameAs(stage);
    }

    @Test
    void whatIsOnStageIsLeftThere(FxRobot robot) {
        Screen screen = screen("one");
        robot.interact(() -> {
            stage.getChildren().setAll(screen.node());
            Backstage backstage = backstage(screen);
            while (backstage.step()) {
                assertThat(screen.node().getParent()).isSameAs(stage);
            }
        });
    }

    @Test
    void aKeyPutsTheWorkOff(FxRobot robot) throws TimeoutException {
        AtomicInteger steps = new AtomicInteger();
        long beganNanos = System.nanoTime();
        robot.interact(() -> new WhileAtRest(stage.getScene()).run(() -> steps.incrementAndGet() <= STEPS));
        robot.type(KeyCode.A);
        WaitForAsyncUtils.waitFor(LONGEST_SECONDS, TimeUnit.SECONDS, () -> steps.get() > 0);
        assertThat(System.nanoTime() - beganNanos).isGreaterThan(TimeUnit.SECONDS.toNanos(1));
        WaitForAsyncUtils.waitFor(LONGEST_SECONDS, TimeUnit.SECONDS, () -> steps.get() > STEPS);
    }

    @Test
    void aRestThatBeganBeforeThereIsWorkCounts(FxRobot robot) throws TimeoutException {
        AtomicBoolean hasRested = new AtomicBoolean();
        AtomicInteger steps = new AtomicInteger();
        WhileAtRest[] atRest = new WhileAtRest[1];
        robot.interact(() -> {
            atRest[0] = new WhileAtRest(stage.getScene());
            new WhileAtRest(stage.getScene()).run(() -> hasRested.getAndSet(true));
        });
        WaitForAsyncUtils.waitFor(LONGEST_SECONDS, TimeUnit.SECONDS, hasRested::get);
        long beganNanos = System.nanoTime();
        robot.interact(() -> atRest[0].run(() -> steps.incrementAndGet() < STEPS));
        WaitForAsyncUtils.waitFor(LONGEST_SECONDS, TimeUnit.SECONDS, () -> steps.get() > 0);
        assertThat(System.nanoTime() - beganNanos).isLessThan(TimeUnit.SECONDS.toNanos(1));
        WaitForAsyncUtils.waitFor(LONGEST_SECONDS, TimeUnit.SECONDS, () -> steps.get() == STEPS);
    }

    private Backstage backstage(Screen... screens) {
        return new Backstage(List.of(screens), wings, 300, 200);
    }

    private static boolean isSeen(Button button) {
        return button.getParent() != null && button.getParent().isVisible();
    }

    private Screen screen(String word) {
        ScreenName name = new ScreenName(word, word, Sign.SETTINGS);
        return new LaterScreen(name, () -> {
            Button button = new Button(word);
            made.add(button);
            return new PlainScreen(name, button, () -> {}, List.of());
        });
    }
}
