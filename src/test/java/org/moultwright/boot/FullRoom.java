package org.moultwright.boot;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import javafx.application.Platform;
import org.moultwright.domain.Account;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.Cause;
import org.moultwright.domain.Check;
import org.moultwright.domain.ContainerKind;
import org.moultwright.domain.LedgerEntry;
import org.moultwright.domain.Look;
import org.moultwright.domain.Span;
import org.moultwright.domain.Stage;
import org.moultwright.domain.Stay;
import org.moultwright.settings.SettingsFile;
import org.moultwright.store.H2Store;
import org.moultwright.ui.ToolkitThread;
import org.moultwright.ui.alarm.AlarmReach;
import org.moultwright.workflow.InventedPots;
import org.moultwright.workflow.ReadingSource;

/** An invented room as full as one is meant to get: 60 broods, 400 trays, 20 000 animals, 5 000 of them in pots. */
public final class FullRoom {
    public static final int BROODS = 60;
    public static final int TRAYS = 400;
    public static final int ANIMALS = 20_000;
    public static final int POTS = 5_000;

    private FullRoom() {}

    /** The whole desk over such a room made in {@code folder}, once it has read it, forecasts and all. */
    public static OpenDesk open(Path folder) {
        H2Store store = store(folder);
        SettingsFile settings = new SettingsFile(folder.resolve("settings.txt"));
        CompletableFuture<Boolean> read = new CompletableFuture<>();
        Workbench workbench = ToolkitThread.ask(() -> {
            Workbench made = new Workbench(
                    OpenedRoom.of(store, InstantSource.fixed(InventedPots.NOW), settings, DeskRoom.NOT_KEPT),
                    settings,
                    Platform::runLater,
                    Optional.empty(),
                    AlarmReach.NOBODY);
            made.roomProperty().addListener((observed, before, after) -> read.complete(true));
            made.readAgain();
            return made;
        });
        ToolkitThread.await(read);
        return new OpenDesk(workbench);
    }

    /** A store with such a room, made in {@code folder}. */
    public static H2Store store(Path folder) {
        H2Store store = H2Store.open(folder.resolve("full.store"));
        for (int brood = 0; brood < BROODS; brood++) {
            BroodRecord record = record(brood);
            store.book().takeIn(record, ReadingSource.of(record));
        }
        return store;
    }

    private static BroodRecord record(int number) {
        int pots = share(POTS, number);
        BroodRecord potted = InventedPots.lived("BB-26-%02d".formatted(number), prefix(number), pots);
        Instant opened = potted.brood().pulled().orElseThrow();
        int firstTray = upTo(TRAYS, number);
        int trays = share(TRAYS, number);
        int animals = share(ANIMALS - POTS, number);
        String box = "box " + (1 + number / 6);
        List<LedgerEntry> entries = new ArrayList<>();
        List<Check> checks = new ArrayList<>();
        List<Stay> stays = new ArrayList<>();
        Span since = new Span(opened, Optional.empty());
        stays.add(new Stay(box, ContainerKind.BOX, Optional.empty(), since));
        for (int tray = 0; tray < trays; tray++) {
            String code = "T%03d".formatted(firstTray + tray);
            int here = animals * (tray + 1) / trays - animals * tray / trays;
            stays.add(new Stay(code, ContainerKind.TRAY, Optional.of(box), since));
            entries.add(LedgerEntry.of(
                    UUID.randomUUID(), opened, Account.SAC, Account.tray(code), Stage.EGG, here, Cause.OPENED));
            for (int day = 2; day < 60; day += 6) {
                checks.add(new Check(UUID.randomUUID(), code, opened.plus(Duration.ofDays(day)), looks(here, day)));
            }
        }
        checks.sort(Comparator.comparing(Check::at));
        return new BroodRecord(
                potted.brood(),
                potted.ledger().with(entries),
                checks,
                stays,
                potted.probeStays(),
                potted.setPoints(),
                potted.readings(),
                potted.mould(),
                potted.care(),
                potted.pots(),
                potted.runUp(),
                potted.extremes(),
                potted.potEvents(),
                List.of());
    }

    /** Eggs with legs, then nymphs, some of which darken. */
    private static Map<Stage, Look> looks(int animals, int day) {
        Map<Stage, Look> looks = new EnumMap<>(Stage.class);
        int dark = day > 50 ? animals * (day - 50) / 20 : 0;
        looks.put(day < 20 ? Stage.POSTEMBRYO : Stage.INSTAR1, new Look.Full(animals - dark));
        looks.put(Stage.DARKENED, new Look.Full(dark));
        return looks;
    }

    private static int upTo(int all, int brood) {
        return all * brood / BROODS;
    }

    private static int share(int all, int brood) {
        return upTo(all, brood + 1) - upTo(all, brood);
    }

    private static String prefix(int brood) {
        String letters = "ABCDEFGHJK";
        return "26" + letters.charAt(brood / 10) + letters.charAt(brood % 10);
    }
}
