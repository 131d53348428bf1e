package org.moultwright.ui;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.stage.Stage;
import org.moultwright.language.PseudoLanguage;
import org.moultwright.language.Texts;
import org.moultwright.settings.TextSize;
import org.testfx.api.FxToolkit;

/**
 * Walks every view in a small window, in an invented wordy language, in the largest text or plainly, and writes down each text
 * that was never said and each that has no room. In a Java machine of its own: a language is chosen before the first
 * text is loaded.
 */
final class PseudoWalk {
    static final String WORDY = "wordy";
    static final String LARGE = "large";
    static final String PLAIN = "plain";

    /** As all tests of screens run. */
    private static final Map<String, String> HEADLESS = Map.of(
            "testfx.robot", "glass",
            "testfx.headless", "true",
            "prism.order", "sw",
            "prism.text", "t2k",
            "java.awt.headless", "true");

    private static final double WIDTH = 1280;
    private static final double HEIGHT = 720;

    /** A part that learns its room while it is laid out takes it in the next pass. */
    private static final int PASSES = 6;

    /** Only views named so, where only some are looked at. */
    private static final String ONLY = System.getProperty("walk.of", "");

    private PseudoWalk() {}

    /** Arguments: which walk, a folder for the rooms, the file for what was found, and a folder for pictures if any. */
    public static void main(String[] arguments) throws Exception {
        HEADLESS.forEach(System::setProperty);
        Locale.setDefault(Locale.UK);
        boolean isWordy = arguments[0].equals(WORDY);
        if (isWordy) {
            Texts.use(PseudoLanguage.made());
        }
        Optional<Path> pictures = arguments.length > 3 ? Optional.of(Path.of(arguments[3])) : Optional.empty();
        Stage stage = FxToolkit.registerPrimaryStage();
        TreeSet<String> found = new TreeSet<>();
        int[] views = {0};
        EveryViewTest.views(Path.of(arguments[1]))
                .filter(view -> view.toString().contains(ONLY))
                .forEach(view -> {
                    EveryViewTest.Worn worn = view.content().get();
                    ToolkitThread.ask(
                            () -> show(worn, stage, arguments[0].equals(LARGE) ? TextSize.LARGEST : TextSize.NORMAL));
                    ToolkitThread.ask(
                            () -> look(view.toString(), stage.getScene().getRoot(), isWordy, found));
                    pictures.ifPresent(folder -> ScreenShots.write(
                            ToolkitThread.ask(() -> stage.getScene().snapshot(null)),
                            folder.resolve(view.toString().replaceAll("[^a-z0-9]+", "-") + ".png")));
                    views[0]++;
                });
        write(Path.of(arguments[2]), views[0], found);
        Platform.exit();
        System.exit(0);
    }

    private static boolean show(EveryViewTest.Worn worn, Stage stage, TextSize size) {
        worn.appearance().textSizeProperty().unbind();
        worn.appearance().textSizeProperty().set(size);
        Scene scene = worn.scene(WIDTH, HEIGHT);
        stage.setScene(scene);
        stage.show();
        layOut(scene.getRoot());
        return true;
    }

    private static void layOut(Parent root) {
        for (int pass = 0; pass < PASSES; pass++) {
            root.applyCss();
            root.layout();
        }
    }

    private static boolean look(String view, Parent root, boolean isWordy, Set<String> found) {
        // What was read aside since it was shown may stand in a text by now.
        layOut(root);
        for (Node node : ShownTexts.nodes(root)) {
            if (ShownTexts.isPageMovedSideways(node)) {
                found.add("SIDEWAYS\t\tthe page is wider than its room\t" + view + "\t" + ShownTexts.place(node));
            }
            if (isWordy) {
                ShownTexts.words(node)
                        .filter(words -> !Unsaid.of(words).isEmpty())
                        .forEach(words -> found.add("UNSAID\t" + Unsaid.of(words) + "\t" + words.replace('\n', '/')
                                + "\t" + view + "\t" + ShownTexts.place(node)));
            }
            ShownTexts.clipped(node, root)
                    .ifPresent(how -> found.add("CLIPPED\t" + words(node) + "\t" + how.replace('\n', '/') + "\t" + view
                            + "\t" + ShownTexts.place(node)));
        }
        return true;
    }

    private static String words(Node node) {
        return ShownTexts.words(node).findFirst().orElse("").replace('\n', '/');
    }

    private static void write(Path file, int views, Set<String> found) throws IOException {
        Files.write(file, List.of("VIEWS\t" + views));
        Files.write(file, found, StandardOpenOption.APPEND);
    }
}
