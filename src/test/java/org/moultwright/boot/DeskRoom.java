package org.moultwright.boot;

import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import javafx.application.Platform;
import org.moultwright.domain.BroodRecord;
import org.moultwright.settings.SettingsFile;
import org.moultwright.store.H2Store;
import org.moultwright.ui.ToolkitThread;
import org.moultwright.ui.alarm.AlarmReach;
import org.moultwright.workflow.InventedPots;
import org.moultwright.workflow.ReadingSource;

/** The rooms every screen is looked at in: nothing yet, the demo's three broods, 600 animals in one, 5 000 pots. */
public enum DeskRoom {
    EMPTY,
    DEMO,
    SIX_HUNDRED,
    FIVE_THOUSAND_POTS;

    static final LeftRooms NOT_KEPT = new LeftRooms(Optional.empty());

    private static final int POTS_IN_BROOD = 1_000;

    /** The whole desk over a store of this room made in {@code folder}, once it has read the room. */
    public OpenDesk open(Path folder) {
        CompletableFuture<Boolean> read = new CompletableFuture<>();
        Workbench workbench = unread(folder);
        ToolkitThread.ask(() -> {
            workbench.roomProperty().addListener((observed, before, after) -> read.complete(true));
            workbench.readAgain();
            return workbench;
        });
        ToolkitThread.await(read);
        return new OpenDesk(workbench);
    }

    /** The same before it has read anything but what is written. */
    Workbench unread(Path folder) {
        Instant now = DemoRoom.USUAL_EVENING;
        H2Store store = H2Store.open(folder.resolve(key() + ".store"));
        fill(store, now);
        SettingsFile settings = new SettingsFile(folder.resolve(key() + "-settings.txt"));
        return ToolkitThread.ask(() -> new Workbench(
                OpenedRoom.of(store, InstantSource.fixed(now), settings, DeskRoom.NOT_KEPT),
                settings,
                Platform::runLater,
                Optional.empty(),
                AlarmReach.NOBODY));
    }

    /** When it is in every room. */
    public static Instant evening() {
        return DemoRoom.USUAL_EVENING;
    }

    /** The room's name in file names. */
    public String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    void fill(H2Store store, Instant now) {
        switch (this) {
            case EMPTY -> {}
            case DEMO -> DemoRoom.fill(store, now);
            case SIX_HUNDRED -> LargeRoom.fill(store, now);
            case FIVE_THOUSAND_POTS -> List.of("A", "B", "C", "D", "E").forEach(letter -> fillWithPots(store, letter));
        }
    }

    private static void fillWithPots(H2Store store, String letter) {
        BroodRecord brood = InventedPots.lived("CC-26-" + letter, "26" + letter, POTS_IN_BROOD);
        store.book().takeIn(brood, ReadingSource.of(brood));
    }
}
