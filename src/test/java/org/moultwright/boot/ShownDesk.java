package org.moultwright.boot;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Labeled;
import javafx.stage.Stage;
import org.moultwright.ui.ToolkitThread;
import org.testfx.util.WaitForAsyncUtils;

/** A whole desk in its window, for tests that work it as a keeper does. Closed as a keeper closes it: window first. */
public final class ShownDesk implements AutoCloseable {
    private static final int LONGEST_SECONDS = 30;

    private final OpenDesk desk;
    private final Stage stage;

    private ShownDesk(OpenDesk desk, Stage stage) {
        this.desk = desk;
        this.stage = stage;
    }

    /** Opens a room made, or found, in {@code folder}, and shows a screen of it. */
    public static ShownDesk open(DeskRoom room, Path folder, Stage stage, String screen) {
        OpenDesk desk = room.open(folder);
        Parent view = desk.show(screen);
        ToolkitThread.ask(() -> {
            Scene scene = new Scene(view, 1280, 800);
            desk.appearance().dress(scene.getStylesheets());
            stage.setScene(scene);
            stage.show();
            return scene;
        });
        return new ShownDesk(desk, stage);
    }

    public OpenDesk desk() {
        return desk;
    }

    /** The words of all labels and buttons that are seen, line by line. */
    public List<String> words() {
        return ToolkitThread.ask(() -> words(stage.getScene().getRoot()).toList());
    }

    public void awaitWords(String sentence) {
        try {
            await(() -> words().contains(sentence));
        } catch (TimeoutException late) {
            assertThat(words()).contains(sentence);
        }
    }

    public static void await(Callable<Boolean> condition) throws TimeoutException {
        WaitForAsyncUtils.waitFor(LONGEST_SECONDS, TimeUnit.SECONDS, condition);
    }

    /** Waits until all of these stand somewhere among the words, whatever stands around them. */
    public void awaitParts(String... parts) {
        for (String part : parts) {
            awaitOrTell(() -> String.join("\n", words()).contains(part));
        }
    }

    /** Waits until something holds, asked on the toolkit's thread; says what is on screen where it never does. */
    public void awaitHolds(Supplier<Boolean> condition) {
        awaitOrTell(() -> ToolkitThread.ask(condition));
    }

    private void awaitOrTell(Callable<Boolean> condition) {
        try {
            await(condition);
        } catch (TimeoutException late) {
            assertThat(focused() + "\n" + String.join("\n", words()))
                    .as("what is on screen")
                    .isEmpty();
        }
    }

    /** What has the keyboard. */
    public Optional<Node> focused() {
        return Optional.ofNullable(stage.getScene().getFocusOwner());
    }

    @Override
    public void close() {
        ToolkitThread.ask(() -> {
            stage.hide();
            return stage;
        });
        desk.close();
    }

    /** The words of all labels and buttons in a part that are seen. On the toolkit's thread. */
    static Stream<String> words(Node node) {
        if (!node.isVisible()) {
            return Stream.empty();
        }
        // A list's cells say nothing of their own.
        Stream<String> own = node instanceof Labeled labeled
                ? Stream.of(labeled.getText()).filter(Objects::nonNull)
                : Stream.empty();
        Stream<String> inside = node instanceof Parent parent
                ? parent.getChildrenUnmodifiable().stream().flatMap(ShownDesk::words)
                : Stream.empty();
        return Stream.concat(own, inside);
    }
}
