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
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.util.Subscription;
import org.moultwright.boot.command.Commands;
import org.moultwright.settings.SettingsFile;
import org.moultwright.store.H2Store;
import org.moultwright.ui.alarm.AlarmReach;
import org.moultwright.workflow.RoomView;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/**
 * The desk on the demo room, started as a keeper's is, by the command line; says when the round can be used: its
 * trays are on screen and can be counted; and when their dates are there as well.
 */
@Command(name = "moultwright")
public final class TimedWorkbench implements Callable<Integer> {
    /** What is said once the round can be used. */
    public static final String USABLE = "usable";

    /** What is said once every forecast is on screen. */
    public static final String DATED = "dated";

    @Option(names = "--store", required = true)
    Path store = Path.of("");

    public static void main(String[] arguments) {
        PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
        PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
        System.exit(Commands.run(new TimedWorkbench(), out, err, arguments));
    }

    @Override
    public Integer call() throws InterruptedException {
        ToolkitStart.begin();
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
                shown -> {
                    sayOnce(shown.workbench().roundRoomProperty(), USABLE);
                    sayOnce(shown.workbench().roomProperty(), DATED);
                });
        return 0;
    }

    private static void sayOnce(ReadOnlyObjectProperty<RoomView> room, String words) {
        Subscription[] listening = new Subscription[1];
        listening[0] = room.subscribe((before, now) -> {
            FirstFrame.say(words);
            listening[0].unsubscribe();
        });
    }
}
