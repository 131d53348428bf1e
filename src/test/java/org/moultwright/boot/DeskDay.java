package org.moultwright.boot;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import javafx.application.Platform;
import javafx.beans.value.ChangeListener;
import javafx.scene.Scene;
import org.moultwright.domain.Look;
import org.moultwright.domain.Quality;
import org.moultwright.domain.Reading;
import org.moultwright.domain.Stage;
import org.moultwright.settings.SettingsFile;
import org.moultwright.store.H2Store;
import org.moultwright.ui.ToolkitThread;
import org.moultwright.ui.alarm.AlarmReach;
import org.moultwright.ui.shell.Screen;
import org.moultwright.workflow.ReadingLog.Logged;
import org.moultwright.workflow.RecordRound;
import org.moultwright.workflow.RoomView;
import org.moultwright.workflow.RoundSheet;

/** A desk of 600 animals that lives through days hour by hour, for measuring what it holds on to. Not on the toolkit's thread. */
public final class DeskDay implements AutoCloseable {
    private static final Duration BETWEEN_READINGS = Duration.ofSeconds(10);
    private static final Map<Stage, Look> AS_EXPECTED = Map.of(Stage.INSTAR2, new Look.Seen());

    private final H2Store store;
    private final Workbench workbench;
    private final Scene scene;
    private volatile Instant now = DemoRoom.USUAL_EVENING;

    /** @param folder where its store is made */
    public DeskDay(Path folder) {
        store = H2Store.open(folder.resolve("day.store"));
        LargeRoom.fill(store, now);
        SettingsFile settings = new SettingsFile(folder.resolve("settings.txt"));
        workbench = ToolkitThread.ask(() -> new Workbench(
                OpenedRoom.of(store, () -> now, settings, DeskRoom.NOT_KEPT),
                settings,
                Platform::runLater,
                Optional.empty(),
                AlarmReach.NOBODY));
        scene = ToolkitThread.ask(() -> {
            Scene made = new Scene(workbench.view(), 1280, 800);
            workbench.appearance().dress(made.getStylesheets());
            return made;
        });
    }

    /** An hour of readings, the room read again, and every screen opened and drawn. */
    public void liveAnHour() {
        Instant end = now.plus(Duration.ofHours(1));
        for (Instant at = now; at.isBefore(end); at = at.plus(BETWEEN_READINGS)) {
            Reading reading = new Reading(at, 27 + 0.1 * Math.sin(at.getEpochSecond() * 0.01), 75, Quality.GOOD);
            store.readings().append("P-1", List.of(new Logged(reading, "")));
        }
        now = end;
        readRoom();
        for (Screen screen : workbench.screens()) {
            ToolkitThread.ask(() -> {
                workbench.open(screen.name().id());
                return scene.snapshot(null);
            });
        }
    }

    /** A round: every tray looked at, and the room read again after each. */
    public void doTheRound() {
        RecordRound record = new RecordRound(store.book(), () -> now, UUID::randomUUID);
        readRoom().occupiedTrays().forEach(tray -> {
            record.save(
                    new RoundSheet(
                            tray.brood(), tray.tray(), now, AS_EXPECTED, List.of(), Optional.empty(), Set.of(), ""),
                    Optional.empty());
            readRoom();
        });
    }

    /** A second later, so that what is read is told even where nothing was written. */
    private RoomView readRoom() {
        now = now.plusSeconds(1);
        CompletableFuture<RoomView> read = new CompletableFuture<>();
        ChangeListener<RoomView> listener = (observed, before, after) -> read.complete(after);
        ToolkitThread.ask(() -> {
            workbench.roomProperty().addListener(listener);
            workbench.readAgain();
            return listener;
        });
        RoomView room = ToolkitThread.await(read);
        ToolkitThread.ask(() -> {
            workbench.roomProperty().removeListener(listener);
            return listener;
        });
        return room;
    }

    @Override
    public void close() {
        ToolkitThread.ask(() -> {
            workbench.close();
            return workbench;
        });
    }
}
