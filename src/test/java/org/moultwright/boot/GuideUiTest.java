package org.moultwright.boot;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextInputControl;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.text.Text;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.moultwright.ui.ToolkitThread;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** What the guide says stands on a screen of the demo room stands there, and so do the keys it lists. */
@ExtendWith(ApplicationExtension.class)
class GuideUiTest {
    private static final int LONGEST_SECONDS = 20;
    private static final String QUESTION = "58 written, 59 expected. Recount, an earlier miscount, or one gone?";

    private static Optional<OpenDesk> opened = Optional.empty();

    @TempDir
    private static Path stores;

    private Scene scene;

    @Start
    void start(Stage stage) {
        scene = new Scene(new Group(), 1280, 800);
        stage.setScene(scene);
        stage.show();
    }

    @AfterAll
    static void close() {
        opened.ifPresent(OpenDesk::close);
    }

    @ParameterizedTest
    @ValueSource(strings = {"broods", "shelf", "climate", "forecast", "potting", "register", "settings"})
    void wordsAndKeysAreThose(String screen) {
        OpenDesk desk = shown(screen);
        GuidePage page = page(screen);
        assertThat(page.wordsOnScreen()).isNotEmpty().allSatisfy(this::awaitWords);
        assertThat(page.keys()).containsExactlyElementsOf(keys(desk, screen));
    }

    @Test
    void theRoundAsksAboutOneNymphTooFew(FxRobot robot) {
        OpenDesk desk = shown("round");
        GuidePage page = page("round");
        assertThat(page.wordsOnScreen())
                .contains(QUESTION)
                .filteredOn(words -> !words.equals(QUESTION))
                .allSatisfy(this::awaitWords);
        assertThat(page.keys()).containsExactlyElementsOf(keys(desk, "round"));
        awaitEntry();
        robot.write("58").press(KeyCode.CONTROL).type(KeyCode.ENTER).release(KeyCode.CONTROL);
        awaitWords(QUESTION);
    }

    private OpenDesk shown(String screen) {
        OpenDesk desk = opened.orElseGet(() -> DeskRoom.DEMO.open(stores));
        opened = Optional.of(desk);
        Parent view = desk.show(screen.equals("broods") ? "round" : "broods");
        ToolkitThread.ask(() -> {
            if (view.getScene() != null) {
                view.getScene().setRoot(new Group());
            }
            desk.appearance().dress(scene.getStylesheets());
            scene.setRoot(view);
            return view;
        });
        desk.show(screen);
        return desk;
    }

    /** Some is read and drawn aside. */
    private void awaitWords(String words) {
        try {
            WaitForAsyncUtils.waitFor(
                    LONGEST_SECONDS, TimeUnit.SECONDS, () -> onScreen().contains(words));
        } catch (TimeoutException late) {
            assertThat(onScreen()).contains(words);
        }
    }

    /** The sheet puts the keeper's hands on its first entry, which takes figures once it is laid out. */
    private void awaitEntry() {
        try {
            WaitForAsyncUtils.waitFor(
                    LONGEST_SECONDS,
                    TimeUnit.SECONDS,
                    () -> ToolkitThread.ask(
                            () -> scene.getFocusOwner() instanceof TextInputControl entry && entry.getSkin() != null));
        } catch (TimeoutException never) {
            assertThat(scene.getFocusOwner()).isInstanceOf(TextInputControl.class);
        }
    }

    /** What stands there, beneath the forecast's lanes under each of its words in turn. */
    private String onScreen() {
        return ToolkitThread.ask(() -> Stream.concat(
                        Stream.of(words(scene.getRoot())),
                        scene.getRoot().lookupAll(".chart-foot .toggle-chip").stream()
                                .map(chip -> {
                                    ((ToggleButton) chip).setSelected(true);
                                    return words(scene.getRoot());
                                }))
                .collect(Collectors.joining("\n")));
    }

    private static String words(Node node) {
        Stream<String> own = Stream.of(
                        Optional.ofNullable(node.getAccessibleText()),
                        node instanceof Labeled labeled
                                ? Optional.ofNullable(labeled.getText())
                                : Optional.<String>empty(),
                        node instanceof Text text ? Optional.of(text.getText()) : Optional.<String>empty(),
                        node instanceof TextInputControl input
                                ? Optional.ofNullable(input.getText())
                                : Optional.<String>empty())
                .flatMap(Optional::stream);
        Stream<String> inside = node instanceof Parent parent
                ? parent.getChildrenUnmodifiable().stream().map(GuideUiTest::words)
                : Stream.empty();
        return Stream.concat(own, inside).collect(Collectors.joining("\n"));
    }

    private static List<String> keys(OpenDesk desk, String screen) {
        return desk.keys(screen).stream()
                .map(hint -> "`%s` | %s".formatted(hint.key(), hint.does()))
                .toList();
    }

    private static GuidePage page(String screen) {
        return GuidePage.of(GuideTest.GUIDE.resolve(screen + ".md"));
    }
}
