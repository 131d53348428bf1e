package org.moultwright.boot;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.ScrollPane;
import org.moultwright.language.Texts;
import org.moultwright.ui.ToolkitThread;
import org.moultwright.ui.shell.Backstage;
import org.moultwright.ui.shell.KeyHint;
import org.moultwright.ui.theme.Appearance;
import org.moultwright.workflow.RoomView;

/** A desk as the program puts it together, for tests that look at all of it. Called from any thread but the toolkit's. */
public final class OpenDesk implements AutoCloseable {
    private final Workbench workbench;

    OpenDesk(Workbench workbench) {
        this.workbench = workbench;
    }

    /** The frame, whichever screen is open in it. */
    public Parent view() {
        return workbench.view();
    }

    /** Opens a screen. On the toolkit's thread. */
    public void open(String screenId) {
        workbench.open(screenId);
    }

    /** The frame with a screen open in it, at its first page and the first of its parts. */
    public Parent show(String screenId) {
        Parent view = ToolkitThread.ask(() -> {
            workbench.open(screenId);
            return workbench.view();
        });
        press("Back");
        press("Plan ahead");
        return view;
    }

    /** The frame with a screen open in it, led on by a button of it. */
    public Parent show(String screenId, String button) {
        Parent view = show(screenId);
        assertThat(press(button))
                .as("there is a button '%s' on %s", button, screenId)
                .isTrue();
        return view;
    }

    /** Presses the first button of these words that is seen; whether there was one. */
    private boolean press(String words) {
        return ToolkitThread.ask(() -> {
            Optional<ButtonBase> found = inside(workbench.view())
                    .filter(ButtonBase.class::isInstance)
                    .map(ButtonBase.class::cast)
                    .filter(button -> button.getText().equals(Texts.say(words)))
                    .findFirst();
            found.ifPresent(ButtonBase::fire);
            return found.isPresent();
        });
    }

    /** All of a view, what a scroll pane will show included: it need not have been on screen yet. */
    private static Stream<Node> inside(Node node) {
        if (node instanceof ScrollPane pane) {
            return Stream.concat(Stream.of(node), inside(pane.getContent()));
        }
        return node instanceof Parent parent
                ? Stream.concat(
                        Stream.of(node),
                        parent.getChildrenUnmodifiable().stream().flatMap(OpenDesk::inside))
                : Stream.of(node);
    }

    /** Where its screens are made ready while the keeper rests. */
    public Backstage backstage() {
        return workbench.backstage();
    }

    /** The room as last read. */
    RoomView room() {
        return ToolkitThread.ask(() -> workbench.roomProperty().get());
    }

    public Appearance appearance() {
        return workbench.appearance();
    }

    /** The keys of a screen of the rail; the settings have none of their own. */
    List<KeyHint> keys(String screenId) {
        return workbench.screens().stream()
                .filter(screen -> screen.name().id().equals(screenId))
                .flatMap(screen -> screen.keys().stream())
                .toList();
    }

    @Override
    public void close() {
        workbench.close();
    }
}
