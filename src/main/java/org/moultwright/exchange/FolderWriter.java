package org.moultwright.exchange;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.jspecify.annotations.Nullable;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.Check;
import org.moultwright.domain.LedgerEntry;
import org.moultwright.domain.PhotoNote;
import org.moultwright.domain.Pot;
import org.moultwright.file.OnDisk;
import org.moultwright.file.WholeFile;
import org.moultwright.workflow.ReadingSource;

/**
 * Writes one brood as a folder: first beside its place, then, forced to the disk, moved there, so that a folder is
 * there whole or not at all. A file without rows is left out. Reversed entries are left out with their reversals.
 */
final class FolderWriter {
    private final Path folder;
    private final Pictures pictures;

    private FolderWriter(Path folder, Pictures pictures) {
        this.folder = folder;
        this.pictures = pictures;
    }

    /** @param pictures where the picture of a photo is; a photo whose picture is nowhere is left out */
    static void write(BroodRecord record, ReadingSource readings, Pictures pictures, Path named) throws IOException {
        requireFree(named);
        Path target = WholeFile.place(named.toAbsolutePath().normalize());
        Path beside = target.resolveSibling(".writing-" + UUID.randomUUID());
        Files.createDirectories(beside);
        try {
            new FolderWriter(beside, pictures).writeAll(record, readings);
            OnDisk.forceAll(beside);
            Files.deleteIfExists(target);
            Files.move(beside, target);
            OnDisk.forceNames(target.resolveSibling(""));
        } finally {
            removeLeftovers(beside);
        }
    }

    private void writeAll(BroodRecord record, ReadingSource readings) throws IOException {
        RowIds unused = new RowIds(record.brood().code());
        Files.writeString(folder.resolve(BroodJson.FILE), BroodJson.write(record.brood()));
        table(PlaceTables.CONTAINERS, record.stays());
        table(PlaceTables.PROBES, record.probeStays());
        table(PlaceTables.SET_POINTS, record.setPoints());
        rows(
                AnimalTables.CHECKS,
                record.checks().stream()
                        .sorted(Comparator.comparing(Check::at).thenComparing(Check::tray))
                        .flatMap(check -> AnimalTables.rows(check).stream())
                        .toList());
        moves(AnimalTables.moves(unused), record.ledger().standing());
        table(NoteTables.mould(unused), record.mould());
        table(NoteTables.care(unused), record.care());
        pots(record.pots());
        table(PotTables.events(unused), record.potEvents());
        table(NoteTables.runUp(unused), record.runUp());
        table(PlaceTables.extremesOf(record.extremes()), record.extremes());
        photos(unused, record.photos());
        readings(readings);
    }

    private void photos(RowIds unused, List<PhotoNote> photos) throws IOException {
        List<PhotoNote> there = photos.stream()
                .filter(photo -> pictures.find(photo.file()).isPresent())
                .toList();
        table(PhotoRows.table(unused), there);
        for (PhotoNote photo : there) {
            Path target = folder.resolve(PhotoRows.place(photo));
            Files.createDirectories(target.getParent());
            if (!Files.exists(target)) {
                Files.copy(pictures.find(photo.file()).orElseThrow(), target);
            }
        }
    }

    /** Other programs know no notes on moves, so the column is there only for those who wrote some. */
    private void moves(Table<LedgerEntry> table, List<LedgerEntry> moves) throws IOException {
        boolean noted = moves.stream().anyMatch(move -> !move.note().isEmpty());
        table(noted ? table : table.without(AnimalTables.NOTE), moves);
    }

    private void pots(List<Pot> pots) throws IOException {
        boolean sized = pots.stream().anyMatch(pot -> !pot.size().isEmpty());
        table(sized ? PotTables.POTS : PotTables.POTS.without(PotTables.SIZE), pots);
    }

    private <T> void table(Table<T> table, List<T> values) throws IOException {
        rows(table, table.sorted(values));
    }

    private <T> void rows(Table<T> table, List<T> values) throws IOException {
        if (!values.isEmpty()) {
            try (CSVPrinter printer = printer(table)) {
                for (T value : values) {
                    printer.printRecord(table.write().cells(value));
                }
            }
        }
    }

    /** The file is begun with the first reading, so that none is there where there is no reading. */
    private void readings(ReadingSource readings) throws IOException {
        Table<ReadingRows.ProbeReading> table = ReadingRows.READINGS;
        AtomicReference<@Nullable CSVPrinter> begun = new AtomicReference<>();
        try {
            readings.handOver((probe, reading) -> {
                try {
                    CSVPrinter printer = begun.get();
                    if (printer == null) {
                        printer = printer(table);
                        begun.set(printer);
                    }
                    printer.printRecord(table.write().cells(new ReadingRows.ProbeReading(probe, reading)));
                } catch (IOException fault) {
                    throw new UncheckedIOException(fault);
                }
            });
        } catch (UncheckedIOException fault) {
            throw fault.getCause();
        } finally {
            CSVPrinter printer = begun.get();
            if (printer != null) {
                printer.close();
            }
        }
    }

    private CSVPrinter printer(Table<?> table) throws IOException {
        Writer writer = Files.newBufferedWriter(folder.resolve(table.file()), StandardCharsets.UTF_8);
        CSVPrinter printer = new CSVPrinter(writer, CSVFormat.RFC4180);
        printer.printRecord(table.columns());
        return printer;
    }

    /** Finds the picture of a photo by its name. */
    @FunctionalInterface
    interface Pictures {
        Optional<Path> find(String file);
    }

    private static void requireFree(Path target) throws IOException {
        if (!Files.exists(target)) {
            return;
        }
        if (!Files.isDirectory(target)) {
            throw new IllegalArgumentException("'" + target + "' is a file; name a folder that is not there yet");
        }
        try (Stream<Path> inside = Files.list(target)) {
            if (inside.findAny().isPresent()) {
                throw new IllegalArgumentException(
                        "'" + target + "' is not empty; name a folder that is not there yet");
            }
        }
    }

    private static void removeLeftovers(Path folder) throws IOException {
        if (Files.exists(folder)) {
            try (Stream<Path> inside = Files.walk(folder)) {
                for (Path path : inside.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(path);
                }
            }
        }
    }
}
