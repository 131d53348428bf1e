package org.moultwright.boot;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.moultwright.domain.Account;
import org.moultwright.domain.Brood;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.Cause;
import org.moultwright.domain.Check;
import org.moultwright.domain.ContainerKind;
import org.moultwright.domain.InstantRange;
import org.moultwright.domain.Ledger;
import org.moultwright.domain.LedgerEntry;
import org.moultwright.domain.Look;
import org.moultwright.domain.ProbeStay;
import org.moultwright.domain.Quality;
import org.moultwright.domain.Reading;
import org.moultwright.domain.SetPoint;
import org.moultwright.domain.Span;
import org.moultwright.domain.Stage;
import org.moultwright.domain.Stay;
import org.moultwright.store.H2Store;
import org.moultwright.workflow.ReadingSource;

/** An invented brood of 600 animals in twelve trays, each tray a day behind the one before it. */
final class LargeRoom {
    private static final int TRAYS = 12;
    private static final int ANIMALS_IN_TRAY = 50;
    private static final int DAYS_OPEN = 44;
    private static final String PROBE = "P-1";

    private final Instant now;
    private final Instant opened;
    private final List<LedgerEntry> entries = new ArrayList<>();
    private final List<Check> checks = new ArrayList<>();
    private final List<Stay> stays = new ArrayList<>();

    private LargeRoom(Instant now) {
        this.now = now;
        this.opened = now.minus(Duration.ofDays(DAYS_OPEN));
    }

    static void fill(H2Store store, Instant now) {
        LargeRoom room = new LargeRoom(now);
        store.book().takeIn(room.record(), room.readings());
    }

    private BroodRecord record() {
        Span open = new Span(opened, Optional.empty());
        stays.add(new Stay("INC-1", ContainerKind.INCUBATOR, Optional.empty(), open));
        stays.add(new Stay("box 1", ContainerKind.BOX, Optional.of("INC-1"), open));
        for (int tray = 1; tray <= TRAYS; tray++) {
            String code = "L%02d".formatted(tray);
            stays.add(new Stay(code, ContainerKind.TRAY, Optional.of("box 1"), open));
            entries.add(LedgerEntry.of(
                    UUID.randomUUID(),
                    opened,
                    Account.SAC,
                    Account.tray(code),
                    Stage.EGG,
                    ANIMALS_IN_TRAY,
                    Cause.OPENED));
            for (int day = 1; day < DAYS_OPEN; day += 4) {
                checks.add(
                        new Check(UUID.randomUUID(), code, opened.plus(Duration.ofDays(day)), looks(day - tray / 2)));
            }
        }
        Brood brood = new Brood(
                "LL-26-A",
                "Poecilotheria regalis",
                ZoneId.of("Europe/Lisbon"),
                Optional.of(new InstantRange(opened.minus(Duration.ofDays(22)), opened.minus(Duration.ofDays(21)))),
                Optional.of(opened),
                List.of(Stage.values()),
                27,
                Optional.empty());
        BroodRecord empty = BroodRecord.of(brood);
        return new BroodRecord(
                brood,
                Ledger.of(entries),
                checks,
                stays,
                List.of(new ProbeStay(PROBE, "box 1", open, 0, 0.1)),
                List.of(new SetPoint("INC-1", open, 27, Double.NaN)),
                empty.readings(),
                empty.mould(),
                empty.care(),
                empty.pots(),
                empty.runUp());
    }

    /** Eggs become nymphs and these slings, half of them by the day given. */
    private static Map<Stage, Look> looks(int day) {
        int past = ANIMALS_IN_TRAY;
        Map<Stage, Look> looks = new EnumMap<>(Stage.class);
        Stage before = Stage.EGG;
        for (Stage stage : List.of(Stage.POSTEMBRYO, Stage.INSTAR1, Stage.DARKENED, Stage.INSTAR2)) {
            int reached = Math.min(past, reached(day, halfDay(stage)));
            looks.put(before, new Look.Full(past - reached));
            past = reached;
            before = stage;
        }
        looks.put(before, new Look.Full(past));
        return looks;
    }

    private static int halfDay(Stage into) {
        return switch (into) {
            case EGG -> 0;
            case POSTEMBRYO -> 3;
            case INSTAR1 -> 14;
            case DARKENED -> 33;
            case INSTAR2 -> 40;
        };
    }

    private static int reached(int day, int halfDay) {
        return (int) Math.round(ANIMALS_IN_TRAY / (1 + Math.exp(-1.2 * (day - halfDay))));
    }

    private ReadingSource readings() {
        return sink -> {
            for (Instant at = opened; !at.isAfter(now); at = at.plus(Duration.ofMinutes(10))) {
                double hours = Duration.between(opened, at).toMinutes() / 60.0;
                sink.accept(PROBE, new Reading(at, 27 + 0.3 * Math.sin(hours / 3), 74, Quality.GOOD));
            }
        };
    }
}
