package org.moultwright.boot;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.InstantSource;
import java.util.Optional;
import java.util.concurrent.Callable;
import javafx.application.Platform;
import org.moultwright.boot.command.Commands;
import org.moultwright.settings.SettingsFile;
import org.moultwright.store.H2Store;
import org.moultwright.ui.alarm.AlarmReach;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/**
 * The desk on the demo room, started as a keeper's is, by the command line; says when the round can be used: the
 * room has been read, forecasts and all, and is on screen.
 */
@Command(name = "moultwright")
public final class TimedWorkbench implements Callable<Integer> {
    /** What is said once the round can be used. */
    public static final String USABLE = "usable";

    @Option(names = "--store", required = true)
    Path store = Path.of("");

    public static void main(String[] arguments) {
        PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
        PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
        System.exit(Commands.run(new TimedWorkbench(), out, err, arguments));
    }

    @Override
    public Integer call() throws InterruptedException {
        boolean isNew = Files.notExists(store);
        H2Store open = H2Store.open(store);
        if (isNew) {
            DemoRoom.fill(open, DemoRoom.USUAL_EVENING);
        }
        InstantSource machine = InstantSource.system();
        InstantSource clock =
                InstantSource.offset(machine, Duration.between(machine.instant(), DemoRoom.USUAL_EVENING));
        Desktop.show(
                "Moultwright",
                () -> new Workbench(
                        open, clock, SettingsFile.atHome(), Platform::runLater, Optional.empty(), AlarmReach.NOBODY),
                shown -> shown.workbench()
                        .roomProperty()
                        .addListener((observed, before, now) -> FirstFrame.say(USABLE)));
        return 0;
    }
}
