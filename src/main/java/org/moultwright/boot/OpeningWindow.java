package org.moultwright.boot;

import java.util.Optional;
import java.util.function.Consumer;
import javafx.animation.AnimationTimer;
import javafx.event.Event;
import javafx.scene.layout.Background;
import javafx.scene.layout.Pane;
import javafx.scene.layout.StackPane;
import javafx.scene.text.Font;
import javafx.scene.text.Text;
import javafx.stage.Stage;
import org.moultwright.language.Texts;
import org.moultwright.settings.Settings;
import org.moultwright.ui.theme.Appearance;
import org.moultwright.ui.theme.Palette;
import org.moultwright.ui.theme.Token;

/**
 * The window of a desk while its store is opened: a keeper sees at once that the program runs, and what the window and
 * its painter need is made ready meanwhile. It has no control, so that no style sheet is read before it is seen, and
 * cannot be closed before its desk is there. Lives on the toolkit's thread.
 */
final class OpeningWindow {
    private static final double WORDS_EMS = 1.5;

    private final String title;
    private final Settings settings;
    private final WindowFile kept;
    private Optional<Stage> shown = Optional.empty();
    private boolean isOver;

    /**
     * @param settings tell the theme and size of text
     * @param kept tells where the window stood last
     */
    OpeningWindow(String title, Settings settings, WindowFile kept) {
        this.title = title;
        this.settings = settings;
        this.kept = kept;
    }

    /**
     * Shows it, unless the desk was quicker.
     *
     * @param meanwhile is given the floor the desk will stand on, dressed as the desk will be, once it is painted
     */
    void show(Consumer<Pane> meanwhile) {
        if (isOver) {
            return;
        }
        Stage stage = DeskWindow.stage(title, kept);
        Palette palette = new Palette(settings.theme());
        Text words = new Text(Texts.say("Opening…"));
        words.setFont(Font.font(settings.textSize().pixels() * WORDS_EMS));
        words.setFill(palette.colour(Token.MUTED));
        StackPane floor = DeskWindow.floor(stage.getScene());
        floor.getChildren().add(words);
        floor.setBackground(Background.fill(palette.colour(Token.BG)));
        // What the window has before the first frame, which a dark room is not to be lit by.
        stage.getScene().setFill(palette.colour(Token.BG));
        stage.setOnCloseRequest(Event::consume);
        stage.show();
        shown = Optional.of(stage);
        new SecondFrame(() -> {
                    if (!isOver) {
                        new Appearance(settings.theme(), settings.textSize())
                                .dress(stage.getScene().getStylesheets());
                        meanwhile.accept(floor);
                    }
                })
                .start();
    }

    /** The window, for the desk that was opened. */
    Stage handOver() {
        isOver = true;
        Stage stage = shown.orElseGet(() -> DeskWindow.stage(title, kept));
        stage.setOnCloseRequest(null);
        shown = Optional.of(stage);
        return stage;
    }

    /** There is no desk to come, or it was taken away again. */
    void close() {
        isOver = true;
        shown.ifPresent(Stage::hide);
    }

    /** Until the second begins, the first has been painted. */
    private static final class SecondFrame extends AnimationTimer {
        private final Runnable then;
        private boolean isSecond;

        SecondFrame(Runnable then) {
            this.then = then;
        }

        @Override
        public void handle(long now) {
            if (isSecond) {
                stop();
                then.run();
            }
            isSecond = true;
        }
    }
}
