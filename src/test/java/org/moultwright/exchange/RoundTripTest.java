package org.moultwright.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.CareNote;
import org.moultwright.domain.Check;
import org.moultwright.domain.InventedBrood;
import org.moultwright.domain.LedgerEntry;
import org.moultwright.domain.MouldNote;
import org.moultwright.domain.ReadingSeries;
import org.moultwright.domain.RunUpEvent;
import org.moultwright.workflow.BroodFolders.FolderContent;

class RoundTripTest {
    private static final UUID NONE = new UUID(0, 0);

    private final PlainBroodFolders folders = new PlainBroodFolders();

    @TempDir
    private Path temporary;

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 40);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void whatIsWrittenReadsBackTheSame(long seed) throws IOException {
        BroodRecord written = RandomRecords.record(seed);
        BroodRecord read = writtenAndRead(written, "first");
        assertThat(rows(read)).isEqualTo(rows(written));
        assertThat(read.brood()).isEqualTo(written.brood());
        assertThat(read.readings()).isEqualTo(withoutEmpty(written));
        assertThat(writtenAndRead(read, "second")).as("identities too").isEqualTo(read);
        assertSameBytes("first", "second");
    }

    @Test
    void withoutNotesTheMovesHaveNoColumnForThem() throws IOException {
        BroodRecord record = InventedBrood.measured("XX-26-A", Instant.parse("2026-03-25T18:00:00Z"), List.of());
        folders.write(record, temporary.resolve("plain"));
        assertThat(temporary.resolve("plain/moves.csv"))
                .hasContent("time,from,to,stage,count,cause\n2026-03-25T18:00:00Z,sac,A1,egg,200,opened");
    }

    @ParameterizedTest
    @ValueSource(strings = {"cc-26-a", "cc-26-b", "cc-26-c"})
    void theDemoFoldersReadBackTheSame(String name) throws IOException {
        BroodRecord demo = read(Path.of("demo-data", name));
        assertThat(writtenAndRead(demo, "first")).isEqualTo(demo);
        assertThat(writtenAndRead(demo, "second")).isEqualTo(demo);
        assertSameBytes("first", "second");
    }

    @Test
    void aZipOfAFolderReadsTheSame() throws IOException {
        BroodRecord record = RandomRecords.record(3);
        assertThat(record.extremes()).isNotEmpty();
        BroodRecord plain = writtenAndRead(record, "plain");
        Path zip = temporary.resolve("plain.zip");
        try (ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(zip));
                Stream<Path> files = Files.list(temporary.resolve("plain"))) {
            for (Path file : files.toList()) {
                out.putNextEntry(new ZipEntry(file.getFileName().toString()));
                Files.copy(file, out);
            }
        }
        assertThat(read(zip)).isEqualTo(plain);
    }

    @Test
    void aFolderThatHoldsAnythingIsNotWrittenInto() throws IOException {
        Path taken = Files.createDirectory(temporary.resolve("taken"));
        Files.writeString(taken.resolve("note.txt"), "mine");
        BroodRecord record = RandomRecords.record(1);
        assertThatThrownBy(() -> folders.write(record, taken))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("taken");
        try (Stream<Path> inside = Files.list(temporary)) {
            assertThat(inside).containsExactly(taken);
        }
    }

    @Test
    void theEmptyFolderALinkPointsToIsWritten() throws IOException {
        Path shared = Files.createDirectories(temporary.resolve("stick").resolve("shared"));
        Path link = Files.createSymbolicLink(temporary.resolve("link"), Path.of("stick", "shared"));
        BroodRecord record = RandomRecords.record(1);
        assertThat(writtenAndRead(record, "link").brood()).isEqualTo(record.brood());
        assertThat(link).isSymbolicLink();
        try (Stream<Path> inside = Files.list(shared.getParent())) {
            assertThat(inside).containsExactly(shared);
        }
    }

    private BroodRecord writtenAndRead(BroodRecord record, String name) {
        folders.write(record, temporary.resolve(name));
        return read(temporary.resolve(name));
    }

    private BroodRecord read(Path folder) {
        FolderContent content = folders.read(folder);
        assertThat(content.problems()).isEmpty();
        return content.record().orElseThrow().withReadings(content.readings().gathered());
    }

    private void assertSameBytes(String one, String other) throws IOException {
        try (Stream<Path> files = Files.list(temporary.resolve(one))) {
            for (Path file : files.toList()) {
                Path twin = temporary.resolve(other).resolve(file.getFileName().toString());
                assertThat(Files.mismatch(file, twin)).as("%s", file).isEqualTo(-1);
            }
        }
    }

    private static Map<String, ReadingSeries> withoutEmpty(BroodRecord record) {
        Map<String, ReadingSeries> readings = new HashMap<>(record.readings());
        readings.values().removeIf(ReadingSeries::isEmpty);
        return readings;
    }

    /** All rows of a record but its readings, without identities, which a folder does not hold. */
    private static List<List<?>> rows(BroodRecord record) {
        return List.of(
                sorted(record.ledger().standing().stream()
                        .map(entry -> new LedgerEntry(
                                NONE,
                                entry.at(),
                                entry.from(),
                                entry.to(),
                                entry.stage(),
                                entry.count(),
                                entry.cause(),
                                entry.note(),
                                Optional.empty()))),
                sorted(record.checks().stream().map(check -> new Check(NONE, check.tray(), check.at(), check.looks()))),
                sorted(record.stays().stream()),
                sorted(record.probeStays().stream()),
                sorted(record.setPoints().stream()),
                sorted(record.mould().stream()
                        .map(note -> new MouldNote(
                                NONE,
                                note.at(),
                                note.tray(),
                                note.where(),
                                note.extent(),
                                note.action(),
                                note.lost()))),
                sorted(record.care().stream()
                        .map(note -> new CareNote(NONE, note.at(), note.tray(), note.what(), note.note()))),
                sorted(record.pots().stream()),
                sorted(record.runUp().stream()
                        .map(event -> new RunUpEvent(NONE, event.at(), event.what(), event.note()))),
                sorted(record.extremes().stream()));
    }

    private static <T> List<T> sorted(Stream<T> rows) {
        return rows.sorted(Comparator.comparing(String::valueOf)).toList();
    }
}
