package org.moultwright.benchmark;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import org.moultwright.boot.FullRoom;
import org.moultwright.boot.OpenDesk;
import org.moultwright.ui.ToolkitThread;
import org.moultwright.ui.shell.Backstage;

/**
 * What screens of the whole desk cost in a room of 60 broods, 400 trays, 20 000 animals and 5 000 pots, read with its
 * forecasts: opening each from another one until it is styled, laid out and drawn, a letter typed into the register's
 * filter, a step in the register, and the next tray of the round. What an unchanged window costs to be drawn stands
 * beside. The first openings are told as they are at once after the start, or after a rest in which the desk made its
 * screens ready; then the longest a key press may have waited for that is told as well. Needs a display or a headless
 * toolkit. Arguments: times (15), and "rested" for the latter.
 */
public final class ScreenBenchmark {
    private static final List<String> SCREENS =
            List.of("round", "broods", "shelf", "climate", "forecast", "potting", "register", "settings");
    private static final String FILTER = "26AA-0 alive";

    private final OpenDesk desk;
    private final int times;
    private final Scene scene;

    private ScreenBenchmark(OpenDesk desk, int times) {
        this.desk = desk;
        this.times = times;
        Parent view = desk.show("settings");
        this.scene = ToolkitThread.ask(() -> {
            Scene made = new Scene(view, 1280, 800);
            desk.appearance().dress(made.getStylesheets());
            made.snapshot(null);
            return made;
        });
    }

    public static void main(String[] arguments) throws IOException, InterruptedException {
        int times = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 15;
        Platform.startup(() -> {});
        Path folder = Files.createTempDirectory("screens");
        boolean isRested = arguments.length > 1 && arguments[1].equals("rested");
        try (OpenDesk desk = FullRoom.open(folder)) {
            new ScreenBenchmark(desk, times).run(isRested);
        }
        Platform.exit();
    }

    private void run(boolean isRested) {
        System.out.printf(
                "%d broods, %d trays, %d animals, %d pots, %d times%n",
                FullRoom.BROODS, FullRoom.TRAYS, FullRoom.ANIMALS, FullRoom.POTS, times);
        if (isRested) {
            report("making screens ready, a step", rest());
        }
        String when = isRested ? ", the first time, rested" : ", the first time, at once";
        Map<String, Stopwatch> opening = new LinkedHashMap<>();
        Map<String, Stopwatch> first = new LinkedHashMap<>();
        for (String screen : SCREENS) {
            first.put(screen, timed(() -> desk.open(screen)));
        }
        for (int time = 0; time < times; time++) {
            for (String screen : SCREENS) {
                opening.computeIfAbsent(screen, none -> new Stopwatch())
                        .add(timed(() -> desk.open(screen)).median());
            }
        }
        first.forEach((screen, once) -> report(screen + when, once));
        opening.forEach(ScreenBenchmark::report);
        report("nothing changed, drawn again (baseline)", again());
        report("register: a letter typed into the filter", typing());
        report("register: a step from pot to pot", keys("register", KeyCode.DOWN));
        report("round: from tray to tray", keys("round", KeyCode.PAGE_DOWN));
    }

    /** All that is done while the keeper rests; between two steps a key press would be heard. */
    private Stopwatch rest() {
        Backstage backstage = ToolkitThread.ask(desk::backstage);
        Stopwatch watch = new Stopwatch();
        boolean[] goesOn = {true};
        while (goesOn[0]) {
            ToolkitThread.ask(() -> {
                watch.time(() -> goesOn[0] = backstage.step());
                return watch;
            });
        }
        return watch;
    }

    private Stopwatch again() {
        Stopwatch watch = new Stopwatch();
        for (int time = 0; time < 3 * times; time++) {
            watch.add(timed(() -> {}).median());
        }
        return watch;
    }

    private Stopwatch typing() {
        Stopwatch watch = new Stopwatch();
        timed(() -> desk.open("register"));
        TextField filter = ToolkitThread.ask(() -> field("filter by words"));
        for (int time = 0; time < times; time++) {
            timed(filter::clear);
            for (int length = 1; length <= FILTER.length(); length++) {
                String typed = FILTER.substring(0, length);
                watch.add(timed(() -> filter.setText(typed)).median());
            }
        }
        timed(filter::clear);
        return watch;
    }

    private Stopwatch keys(String screen, KeyCode key) {
        Stopwatch watch = new Stopwatch();
        timed(() -> desk.open(screen));
        for (int time = 0; time < 3 * times; time++) {
            watch.add(timed(() -> press(key)).median());
        }
        return watch;
    }

    private void press(KeyCode key) {
        Node owner = scene.getFocusOwner() == null ? scene.getRoot() : scene.getFocusOwner();
        owner.fireEvent(new KeyEvent(KeyEvent.KEY_PRESSED, "", "", key, false, false, false, false));
    }

    private TextField field(String name) {
        return (TextField) scene.getRoot().lookupAll(".text-field").stream()
                .filter(node -> name.equals(node.getAccessibleText()))
                .findFirst()
                .orElseThrow();
    }

    /** Something done on the toolkit's thread, and all it changed drawn. */
    private Stopwatch timed(Runnable work) {
        return ToolkitThread.ask(() -> {
            Stopwatch watch = new Stopwatch();
            watch.time(() -> {
                work.run();
                scene.snapshot(null);
            });
            return watch;
        });
    }

    private static void report(String what, Stopwatch times) {
        System.out.printf(
                "%-45s median %7.1f ms (%.1f to %.1f)%n",
                what, 1000 * times.median(), 1000 * times.shortest(), 1000 * times.longest());
    }
}
