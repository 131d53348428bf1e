package org.moultwright.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.stage.Stage;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.moultwright.settings.TextSize;
import org.moultwright.ui.control.EntryField;
import org.testfx.util.WaitForAsyncUtils;

/** What a field says of an entry it does not take can be read whole where it is typed, in a small window and the largest text. */
@ExtendWith(OneWindow.class)
class RefusalIsSeenTest {
    private static final int LONGEST_SECONDS = 5;

    private static final double TOLERANCE_PIXELS = 1.5;

    /** More than any field takes, and no figure. */
    private static final String REFUSED = "§ ".repeat(60);

    @TempDir
    private static Path folder;

    static Stream<EveryViewTest.View> views() {
        return EveryViewTest.viewsOfSmallRooms(folder);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("views")
    void whereItIsTyped(EveryViewTest.View view, Stage window) {
        EveryViewTest.Worn worn = view.content().get();
        for (TextSize size : List.of(TextSize.NORMAL, TextSize.LARGEST)) {
            Scene scene = ToolkitThread.ask(() -> {
                worn.appearance().textSizeProperty().unbind();
                worn.appearance().textSizeProperty().set(size);
                Scene shown = worn.scene(1280, 720);
                window.setScene(shown);
                window.show();
                return shown;
            });
            OneWindow.settle(scene);
            List<EntryField> fields = ToolkitThread.ask(() -> fields(scene));
            if (fields.isEmpty()) {
                return;
            }
            List<String> unread = new ArrayList<>();
            for (EntryField field : fields) {
                ToolkitThread.run(() -> {
                    field.input().requestFocus();
                    field.input().appendText(REFUSED);
                });
                atRest(field, scene).ifPresent(unread::add);
            }
            assertThat(unread).as(size.name()).isEmpty();
        }
    }

    private static List<EntryField> fields(Scene scene) {
        return ShownTexts.nodes(scene.getRoot()).stream()
                .filter(EntryField.class::isInstance)
                .map(EntryField.class::cast)
                .filter(field -> !field.input().isDisabled() && field.input().isEditable())
                .toList();
    }

    /** A page scrolls to what is said in its next frames. */
    private static Optional<String> atRest(EntryField field, Scene scene) {
        OneWindow.settle(scene);
        Supplier<Optional<String>> unread = () -> ToolkitThread.ask(() -> unread(field, scene));
        try {
            WaitForAsyncUtils.waitFor(
                    LONGEST_SECONDS, TimeUnit.SECONDS, () -> unread.get().isEmpty());
        } catch (TimeoutException stays) {
            return unread.get();
        }
        return Optional.empty();
    }

    private static Optional<String> unread(EntryField field, Scene scene) {
        return entries(field)
                .flatMap(entry -> said(entry).stream()
                        .map(said -> ShownTexts.clipped(said, scene.getRoot())
                                .or(() -> narrow(said, entry))
                                .or(() -> hidden(said))
                                .map(how -> "'" + said.getText() + "' " + how)))
                .findFirst()
                .orElse(Optional.of("says nothing"))
                .map(how -> field.input().getAccessibleText() + ": " + how);
    }

    /** The field, and the row around it that says what has no room beneath the field. */
    private static Stream<Region> entries(EntryField field) {
        return Stream.<Node>iterate(field, Objects::nonNull, Node::getParent)
                .filter(around -> around.getStyleClass().contains("entry"))
                .map(Region.class::cast);
    }

    private static Optional<Label> said(Region entry) {
        return entry.getChildrenUnmodifiable().stream()
                .filter(part -> part.isVisible() && part.getStyleClass().contains("problem"))
                .map(Label.class::cast)
                .findFirst();
    }

    /** Whether it has less than the width of its field, or its row, to break its lines in. */
    private static Optional<String> narrow(Label said, Region entry) {
        double missing = entry.getWidth() - said.getWidth();
        return missing > TOLERANCE_PIXELS
                ? Optional.of("is narrower than its field by " + Math.round(missing))
                : Optional.empty();
    }

    /** How many pixels of it are scrolled out of sight. */
    private static Optional<String> hidden(Label said) {
        Bounds at = said.localToScene(said.getLayoutBounds());
        double hidden = 0;
        for (Node around = said.getParent(); around != null; around = around.getParent()) {
            if (around.getParent() == null || around.getStyleClass().contains("viewport")) {
                Bounds room = around.localToScene(around.getLayoutBounds());
                hidden = Math.max(hidden, Math.max(at.getMaxY() - room.getMaxY(), room.getMinY() - at.getMinY()));
            }
        }
        return hidden > TOLERANCE_PIXELS ? Optional.of("is out of sight by " + Math.round(hidden)) : Optional.empty();
    }
}
