package org.moultwright.ui.intake;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.Parent;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.ContainerKind;
import org.moultwright.domain.Extremes;
import org.moultwright.domain.InventedBrood;
import org.moultwright.domain.Span;
import org.moultwright.domain.Stay;
import org.moultwright.exchange.DelimitedReadings;
import org.moultwright.task.InlineRunner;
import org.moultwright.text.DayWords;
import org.moultwright.workflow.BroodBook;
import org.moultwright.workflow.BroodView;
import org.moultwright.workflow.BulkReadings;
import org.moultwright.workflow.ClimateBook;
import org.moultwright.workflow.MemoryBroodBook;
import org.moultwright.workflow.ReadingSource;
import org.moultwright.workflow.RoomView;
import org.moultwright.workflow.TakeInReadings;
import org.moultwright.workflow.UndoDeed;
import org.moultwright.workflow.WriteClimate;

/** An invented room in which climate is written in, and its pages in states worth looking at. */
public final class IntakePictures {
    static final Instant NOW = Instant.parse("2026-05-03T18:41:00Z");
    static final ZoneId ZONE = ZoneId.of("Europe/Lisbon");

    private static final Instant START = NOW.minus(Duration.ofDays(40));

    private IntakePictures() {}

    /** A reading just kept, and the next half typed. */
    public static Parent reading() {
        ReadingViewModel model = new ReadingViewModel(desk(Path.of("")));
        model.celsiusProperty().set("26.4");
        model.humidityProperty().set("71");
        model.keep();
        model.celsiusProperty().set("72");
        return new ReadingView(model, () -> {}).node();
    }

    /** A lowest and a highest that changed places. */
    public static Parent extremes() {
        IntakeDesk desk = desk(Path.of(""));
        desk.write().keep(new Extremes("box 1", NOW.minus(Duration.ofDays(2)), NOW.minus(Duration.ofDays(1)), 24, 27));
        ExtremesViewModel model = new ExtremesViewModel(desk);
        model.lowestProperty().set("27");
        model.highestProperty().set("24.5");
        model.keep();
        return new ExtremesView(model, () -> {}).node();
    }

    /** A logger's file as it is proposed. */
    public static Parent file() {
        IntakeDesk desk = desk(loggerFile());
        FileViewModel model = new FileViewModel(desk, loggerFile());
        model.probeProperty().set("P-9");
        return new FileView(model, desk, () -> {});
    }

    /** A file of which some rows are no reading. */
    public static Parent taken() {
        IntakeDesk desk = desk(loggerFile());
        FileViewModel model = new FileViewModel(desk, loggerFile());
        model.probeProperty().set("P-9");
        model.takeIn();
        return new FileView(model, desk, () -> {});
    }

    static IntakeDesk desk(Path file) {
        MemoryBroodBook book = new MemoryBroodBook();
        book.takeIn(record(), ReadingSource.of(record()));
        return desk(file, book, book, (deed, readings, placings) -> {
            Set<Object> seen = new HashSet<>();
            readings.handOver((probe, reading) -> seen.add(reading.takenAt()));
            return seen.size();
        });
    }

    static IntakeDesk desk(Path file, BroodBook book, ClimateBook climate, BulkReadings log) {
        DelimitedReadings files = new DelimitedReadings();
        return new IntakeDesk(
                new SimpleObjectProperty<>(room()),
                () -> {},
                new WriteClimate(book, climate, () -> NOW, UUID::randomUUID),
                new UndoDeed(book, () -> NOW, UUID::randomUUID),
                files,
                new TakeInReadings(files, log, book, climate, () -> NOW, UUID::randomUUID),
                () -> Optional.of(file),
                new InlineRunner(),
                new InlineRunner(),
                () -> NOW,
                new DayWords(ZONE));
    }

    static RoomView room() {
        return new RoomView(
                NOW, List.of(new BroodView(record(), List.of(), Optional.empty())), Map.of(), Optional.empty());
    }

    static BroodRecord record() {
        BroodRecord bare = InventedBrood.measured("XX-26-A", START, List.of());
        Span forGood = new Span(START, Optional.empty());
        return new BroodRecord(
                bare.brood(),
                bare.ledger(),
                bare.checks(),
                List.of(
                        new Stay("A1", ContainerKind.TRAY, Optional.of("box 1"), forGood),
                        new Stay("box 1", ContainerKind.BOX, Optional.of("incubator"), forGood),
                        new Stay("incubator", ContainerKind.INCUBATOR, Optional.empty(), forGood)),
                bare.probeStays(),
                bare.setPoints(),
                bare.readings(),
                bare.mould(),
                bare.care(),
                bare.pots(),
                bare.runUp());
    }

    static Path loggerFile() {
        StringBuilder text = new StringBuilder("Logger 4711\r\nNr.;Zeit;Temperatur [°C];Feuchte [%];Batterie [V]\r\n");
        for (int i = 0; i < 200; i++) {
            text.append("%d;%02d.04.2026 %02d:00:00;%d,%d;7%d;2,9\r\n"
                    .formatted(i + 1, 1 + i / 24, i % 24, 26 + i % 2, i % 10, i % 9));
            if (i % 5 == 3) {
                text.append(i + 1)
                        .append(";")
                        .append("%02d.04.2026 %02d:30:00;ERR;;2,9\r\n".formatted(1 + i / 24, i % 24));
            }
        }
        try {
            Path file = Files.createDirectories(Path.of("target", "intake")).resolve("box-1-april.csv");
            return Files.writeString(file, text.toString(), StandardCharsets.ISO_8859_1);
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }
}
