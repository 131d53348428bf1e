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
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.stage.Stage;
import org.moultwright.boot.FullRoom;
import org.moultwright.boot.OpenDesk;
import org.moultwright.ui.ToolkitThread;
import org.moultwright.ui.shell.Backstage;

/**
 * What screens of the whole desk cost in a room of 60 broods, 400 trays, 20 000 animals and 5 000 pots, read with its
 * forecasts: opening each from another one, a letter typed into the register's filter, a step in the register, the next
 * tray of the round, and a figure typed there. Measured is what a keeper sees in a window on a display: the time from
 * the key or the click until the window has the first frame that shows what it did ({@link Presented}), and beside it,
 * for machines that are busy with other things, how long the processor worked for it.
 *
 * <p>The first openings are told as they are at once after the start, or after a rest in which the desk made its screens
 * ready; then the longest a key press may have waited for that is told as well. Needs a display. Arguments: times (15),
 * and "rested" for the latter.
 */
public final class ScreenBenchmark {
    /** The round stands open from the start, as in use. */
    private static final List<String> SCREENS =
            List.of("broods", "shelf", "climate", "forecast", "potting", "register", "settings", "round");

    private static final String FILTER = "26AA-0 alive";

    private final OpenDesk desk;
    private final int times;
    private final Scene scene;
    private final Presented presented;
    private Stopwatch pulses = new Stopwatch();
    private double pulseBeganSeconds;

    private ScreenBenchmark(OpenDesk desk, int times) {
        this.desk = desk;
        this.times = times;
        Parent view = desk.show("round");
        this.scene = ToolkitThread.ask(() -> {
            Scene made = new Scene(view, 1280, 800);
            desk.appearance().dress(made.getStylesheets());
            Stage window = new Stage();
            window.setScene(made);
            window.show();
            made.addPreLayoutPulseListener(() -> pulseBeganSeconds = Presented.worked());
            made.addPostLayoutPulseListener(() -> pulses.add(Presented.worked() - pulseBeganSeconds));
            return made;
        });
        this.presented = new Presented(scene);
    }

    public static void main(String[] arguments) throws IOException {
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
            rest();
        }
        String when = isRested ? ", the first time, rested" : ", the first time, at once";
        Map<String, FrameTimes> opening = new LinkedHashMap<>();
        for (String screen : SCREENS) {
            FrameTimes first = new FrameTimes(screen + when);
            first.add(opened(screen));
            first.report();
            opening.put(screen, new FrameTimes(screen));
        }
        for (int time = 0; time < times; time++) {
            opening.forEach((screen, every) -> every.add(opened(screen)));
        }
        opening.values().forEach(FrameTimes::report);
        typing();
        keys("register: a step from pot to pot", "register", KeyCode.DOWN);
        keys("round: from tray to tray", "round", KeyCode.PAGE_DOWN);
        counting();
        inWords();
    }

    /**
     * All that is done while the keeper rests. Between two steps a key press would be heard, and what a step left is laid
     * out, in a pulse of its own.
     */
    private void rest() {
        Backstage backstage = ToolkitThread.ask(desk::backstage);
        Stopwatch clock = new Stopwatch();
        Stopwatch worked = new Stopwatch();
        boolean[] goesOn = {true};
        presented.comeToRest();
        pulses = new Stopwatch();
        while (goesOn[0]) {
            ToolkitThread.ask(() -> {
                double before = Presented.worked();
                clock.time(() -> goesOn[0] = backstage.step());
                worked.add(Presented.worked() - before);
                return worked;
            });
            presented.comeToRest();
        }
        System.out.printf(
                "%-45s longest %6.1f ms; the toolkit worked %6.1f ms at most, and %.1f ms in a pulse between%n",
                "making screens ready, a step",
                1000 * clock.longest(),
                1000 * worked.longest(),
                1000 * ToolkitThread.ask(pulses::longest));
    }

    private Presented.Shown opened(String screen) {
        return presented.after(() -> desk.open(screen));
    }

    private void typing() {
        FrameTimes each = new FrameTimes("register: a letter typed into the filter");
        opened("register");
        TextField filter = ToolkitThread.ask(() -> field("filter by words"));
        for (int time = 0; time < times; time++) {
            presented.after(filter::clear);
            for (int length = 1; length <= FILTER.length(); length++) {
                String typed = FILTER.substring(0, length);
                each.add(presented.after(() -> filter.setText(typed)));
            }
        }
        presented.after(filter::clear);
        each.report();
    }

    private void keys(String what, String screen, KeyCode key) {
        FrameTimes each = new FrameTimes(what);
        opened(screen);
        for (int time = 0; time < 3 * times; time++) {
            each.add(presented.after(
                    () -> fire(new KeyEvent(KeyEvent.KEY_PRESSED, "", "", key, false, false, false, false))));
        }
        each.report();
    }

    private void counting() {
        FrameTimes each = new FrameTimes("round: a figure typed");
        for (int time = 0; time < 3 * times; time++) {
            each.add(presented.after(() ->
                    fire(new KeyEvent(KeyEvent.KEY_TYPED, "1", "", KeyCode.UNDEFINED, false, false, false, false))));
        }
        each.report();
    }

    /** Made when it is first asked for. */
    private void inWords() {
        opened("forecast");
        ToggleButton words = ToolkitThread.ask(() -> (ToggleButton) scene.getRoot().lookupAll(".toggle-chip").stream()
                .filter(node ->
                        node instanceof ToggleButton chip && chip.getText().equals("In words"))
                .findFirst()
                .orElseThrow());
        FrameTimes first = new FrameTimes("forecast: in words, the first time");
        first.add(presented.after(words::fire));
        first.report();
    }

    private void fire(KeyEvent event) {
        Node owner = scene.getFocusOwner() == null ? scene.getRoot() : scene.getFocusOwner();
        owner.fireEvent(event);
    }

    private TextField field(String name) {
        return (TextField) scene.getRoot().lookupAll(".text-field").stream()
                .filter(node -> name.equals(node.getAccessibleText()))
                .findFirst()
                .orElseThrow();
    }
}
