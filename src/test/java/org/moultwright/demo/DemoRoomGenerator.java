package org.moultwright.demo;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicLong;
import org.moultwright.domain.Brood;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.Check;
import org.moultwright.domain.ContainerKind;
import org.moultwright.domain.Ledger;
import org.moultwright.domain.LedgerEntry;
import org.moultwright.domain.Pot;
import org.moultwright.domain.ProbeStay;
import org.moultwright.domain.ReadingSeries;
import org.moultwright.domain.SetPoint;
import org.moultwright.domain.Span;
import org.moultwright.domain.Stage;
import org.moultwright.domain.Stay;
import org.moultwright.domain.code.CodeFacts;
import org.moultwright.domain.code.CodePattern;
import org.moultwright.domain.code.CodeRun;
import org.moultwright.domain.code.PotCode;
import org.moultwright.domain.code.TakenCodes;
import org.moultwright.exchange.PlainBroodFolders;

/**
 * Makes the folders of {@code demo-data} from its table of counts; run {@link #main} to write them anew after a
 * change here. The same code always writes the same bytes. All of it is invented.
 */
public final class DemoRoomGenerator {
    static final Path DATA = Path.of("demo-data");

    private static final Instant ROOM_SET_UP = Instant.parse("2026-02-15T12:00:00Z");
    private static final Duration PULLED_TO_OPENED = Duration.ofHours(1);
    private static final Duration LAST_CHECK_TO_END = Duration.ofHours(1);
    private static final String INCUBATOR = "INC-1";

    private final Path table;
    private final AtomicLong lastId = new AtomicLong();

    DemoRoomGenerator(Path table) {
        this.table = table;
    }

    /** Writes the folders into {@code demo-data}, or into the folder named; none of them may be there yet. */
    public static void main(String[] arguments) throws IOException {
        Path target = arguments.length == 0 ? DATA : Path.of(arguments[0]);
        DemoRoomGenerator generator = new DemoRoomGenerator(DATA.resolve("trays.csv"));
        for (DemoBrood facts : DemoBrood.ALL) {
            new PlainBroodFolders().write(generator.record(facts), target.resolve(facts.folder()));
        }
    }

    BroodRecord record(DemoBrood facts) throws IOException {
        List<TrayStory> stories = stories(facts);
        List<LedgerEntry> entries = new ArrayList<>();
        List<Check> checks = new ArrayList<>();
        stories.forEach(story -> {
            entries.addAll(story.entries());
            checks.addAll(story.checks());
        });
        checks.sort(Comparator.comparing(Check::at).thenComparing(Check::tray));
        Instant end = stories.stream()
                .map(TrayStory::lastCheck)
                .max(Comparator.naturalOrder())
                .orElseThrow()
                .plus(LAST_CHECK_TO_END);
        DemoNotes notes = new DemoNotes(facts, this::nextId);
        return new BroodRecord(
                facts.brood(),
                Ledger.of(entries),
                checks,
                stays(facts, end),
                List.of(probeStay(facts)),
                setPoints(facts),
                readings(facts, end),
                notes.mould(),
                notes.care(dayOf(facts.pulled()), dayOf(end)),
                pots(facts.brood(), stories),
                notes.runUp());
    }

    private List<TrayStory> stories(DemoBrood facts) throws IOException {
        List<TrayStory> stories = new ArrayList<>();
        for (DemoBrood.DemoTray tray : facts.trays()) {
            stories.add(new TrayStory(
                    tray, DemoCounts.ofTray(table, tray.code()), facts.pulled().plus(PULLED_TO_OPENED), this::nextId));
            if (tray.code().equals("A2")) {
                stories.get(stories.size() - 1)
                        .miscount(
                                LocalDate.parse("2026-03-26"),
                                Map.of(Stage.EGG, 16, Stage.POSTEMBRYO, 41),
                                Map.of(Stage.EGG, 4, Stage.POSTEMBRYO, 54));
            }
        }
        return stories;
    }

    private static List<Stay> stays(DemoBrood facts, Instant end) {
        List<Stay> stays = new ArrayList<>(List.of(
                new Stay("room", ContainerKind.ROOM, Optional.empty(), open(ROOM_SET_UP)),
                new Stay(INCUBATOR, ContainerKind.INCUBATOR, Optional.of("room"), open(ROOM_SET_UP)),
                new Stay(facts.box(), ContainerKind.BOX, Optional.of(INCUBATOR), open(ROOM_SET_UP)),
                new Stay(facts.mother(), ContainerKind.BOX, Optional.of("room"), open(ROOM_SET_UP)),
                new Stay(
                        facts.code(),
                        ContainerKind.HAMMOCK,
                        Optional.of(facts.mother()),
                        new Span(facts.laid().earliest(), Optional.of(facts.pulled())))));
        Span inTrays = new Span(facts.pulled().plus(PULLED_TO_OPENED), Optional.of(end));
        facts.trays()
                .forEach(tray ->
                        stays.add(new Stay(tray.code(), ContainerKind.TRAY, Optional.of(facts.box()), inTrays)));
        return stays;
    }

    private static ProbeStay probeStay(DemoBrood facts) {
        return facts.box().equals("box 1")
                ? new ProbeStay("P-1", facts.box(), open(ROOM_SET_UP), 0.2, 0.1)
                : new ProbeStay("P-2", facts.box(), open(ROOM_SET_UP), 0, 0.1);
    }

    private static List<SetPoint> setPoints(DemoBrood facts) {
        Span asDisplayed = new Span(ROOM_SET_UP, Optional.of(DemoClimate.SET_POINT_RAISED));
        return List.of(
                new SetPoint(facts.mother(), open(ROOM_SET_UP), facts.motherCelsius(), Double.NaN),
                new SetPoint(INCUBATOR, asDisplayed, 27.0, 76),
                new SetPoint(INCUBATOR, open(DemoClimate.SET_POINT_RAISED), 28.3, 76));
    }

    private Map<String, ReadingSeries> readings(DemoBrood facts, Instant end) throws IOException {
        Instant start = DemoClimate.startOfDay(dayOf(facts.laid().earliest()));
        return facts.box().equals("box 1")
                ? Map.of("P-1", DemoClimate.ofBox1(doorOpenings()).readings(start, end))
                : Map.of("P-2", DemoClimate.ofBox2(doorOpenings()).readings(start, end));
    }

    /** The door opens once an evening, when the keeper comes to the first tray due. */
    private List<Instant> doorOpenings() throws IOException {
        List<Instant> openings = new ArrayList<>();
        for (DemoBrood facts : DemoBrood.ALL) {
            for (DemoBrood.DemoTray tray : facts.trays()) {
                for (DemoCounts.Row row : DemoCounts.ofTray(table, tray.code())) {
                    openings.add(tray.check(row.date()));
                }
            }
        }
        openings.sort(Comparator.naturalOrder());
        return openings;
    }

    private static List<Pot> pots(Brood brood, List<TrayStory> stories) {
        List<Pot> pots = new ArrayList<>();
        TakenCodes taken = TakenCodes.of(List.of());
        List<LedgerEntry> pottings = stories.stream()
                .flatMap(story -> story.pottings().stream())
                .sorted(Comparator.comparing(LedgerEntry::at))
                .toList();
        for (LedgerEntry potting : pottings) {
            String label = "C. cyaneopubescens, sling " + dayOf(potting.at());
            String tray = potting.from().code();
            CodeRun run = CodePattern.STANDARD.run(CodeFacts.of(brood, tray, potting.at()));
            for (PotCode code : run.next(potting.count(), taken)) {
                pots.add(new Pot(code.text(), tray, potting.at(), label));
            }
        }
        return pots;
    }

    private UUID nextId() {
        return new UUID(0, lastId.incrementAndGet());
    }

    private static LocalDate dayOf(Instant instant) {
        return LocalDate.ofInstant(instant, DemoBrood.ZONE);
    }

    private static Span open(Instant from) {
        return new Span(from, Optional.empty());
    }
}
