package org.moultwright.boot;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import javafx.application.Platform;
import javafx.stage.Stage;
import javafx.util.Subscription;

/**
 * The program itself, started as a keeper starts it, that also says when the round can be used: its trays are on screen
 * and a key pressed is counted; and when their dates are there as well. Its window closes once its input ends, as a keeper
 * closes it: a store that was not closed takes longer to open the next time.
 */
public final class TimedWorkbench {
    /** What is said once the round can be used. */
    public static final String USABLE = FirstCount.SAID;

    /** What is said once every forecast is on screen. */
    public static final String DATED = "dated";

    private TimedWorkbench() {}

    public static void main(String[] arguments) {
        Locale.setDefault(Locale.UK);
        PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
        PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
        System.exit(Launcher.run(new OpenWorkbench(Desktop::refuse, TimedWorkbench::watch), out, err, arguments));
    }

    private static void closeAfterInput(Stage stage) {
        try {
            System.in.transferTo(OutputStream.nullOutputStream());
        } catch (IOException ended) {
            // Then its input has ended as well.
        }
        Platform.runLater(stage::close);
    }

    private static void watch(Desktop.Shown shown) {
        new FirstCount(shown.stage().getScene()).start();
        Thread ending = new Thread(() -> closeAfterInput(shown.stage()), "end of input");
        ending.setDaemon(true);
        ending.start();
        Subscription[] listening = new Subscription[1];
        listening[0] = shown.workbench().roomProperty().subscribe((before, now) -> {
            FirstFrame.say(DATED);
            listening[0].unsubscribe();
        });
    }
}
