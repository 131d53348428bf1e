package org.moultwright.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.moultwright.device.profile.LineProfiles;
import org.moultwright.device.serial.KnownLinesFile;
import org.moultwright.document.IcsCalendarFiles;
import org.moultwright.domain.Stage;
import org.moultwright.exchange.DraftsFile;
import org.moultwright.exchange.SitterFile;
import org.moultwright.settings.Settings;
import org.moultwright.settings.SettingsFile;
import org.moultwright.workflow.CalendarEntry;
import org.moultwright.workflow.ProbeLine;
import org.moultwright.workflow.SheetDraft;

/** Every file the program keeps or makes in place of an older one, through the class that writes it. */
class KeptFilesTest {
    @TempDir
    Path folder;

    @ParameterizedTest
    @MethodSource("kept")
    void onAFullDiskTheOlderStaysAndNothingIsLeftBeside(Kept kept) throws IOException {
        Optional<SmallDisk> made = SmallDisk.at(folder, 1);
        assumeThat(made).as("this machine lets a program make a small disk").isPresent();
        try (SmallDisk disk = made.orElseThrow()) {
            Path file = disk.file(kept.name);
            kept.writing.write(file, 1);
            byte[] older = Files.readAllBytes(file);
            disk.fillToTheBrim();
            assertThatThrownBy(() -> kept.writing.write(file, 2)).isInstanceOf(RuntimeException.class);
            assertThat(file).hasBinaryContent(older);
            disk.giveRoom();
            assertThat(names(folder)).containsExactly(kept.name);
            kept.writing.write(file, 2);
            assertThat(Files.readAllBytes(file)).isNotEqualTo(older);
        }
    }

    @ParameterizedTest
    @MethodSource("kept")
    void whatALinkPointsToIsWrittenAndTheLinkStays(Kept kept) throws IOException {
        Path shared = Files.createDirectory(folder.resolve("shared")).resolve("ours");
        Path link = folder.resolve(kept.name);
        kept.writing.write(link, 1);
        Files.move(link, shared);
        byte[] older = Files.readAllBytes(shared);
        Files.createSymbolicLink(link, Path.of("shared", "ours"));
        kept.writing.write(link, 2);
        assertThat(link).isSymbolicLink();
        assertThat(Files.readAllBytes(shared)).isNotEqualTo(older);
        assertThat(names(folder)).containsExactly(kept.name, "shared");
        assertThat(names(folder.resolve("shared"))).containsExactly("ours");
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> inside = Files.list(folder)) {
            return inside.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    static List<Kept> kept() {
        return List.of(
                new Kept(
                        "settings.txt",
                        (file, number) -> new SettingsFile(file)
                                .save(Settings.DEFAULT.withLabels(Map.of(Stage.INSTAR2, "Spiderling " + number)))),
                new Kept(
                        "probes.txt",
                        (file, number) -> new KnownLinesFile(file)
                                .remember("P-1", new ProbeLine("/dev/ttyUSB" + number, "plain-number"))),
                new Kept(
                        "own.profile",
                        (file, number) ->
                                LineProfiles.withKeepers(file.getParent()).save(profile(number))),
                new Kept(
                        "own.sheets",
                        (file, number) -> DraftsFile.ofSheets(file).keep(List.of(sheet(number)))),
                new Kept(
                        "own.sitter",
                        (file, number) ->
                                new SitterFile(file, InstantSource.system()).write(Instant.ofEpochSecond(number))),
                new Kept(
                        "own.ics",
                        (file, number) -> new IcsCalendarFiles().save(List.of(entry(number)), Instant.EPOCH, file)));
    }

    private static List<String> profile(int number) {
        return List.of(
                "code: own",
                "title: Number " + number,
                "port: 9600 8N1",
                "channel: temperature C",
                "record: ^(?<temperature>\\d+)$",
                "test: \"26\" -> 26");
    }

    private static SheetDraft sheet(int number) {
        return new SheetDraft(
                "CC-26-A",
                "A1",
                new SheetDraft.Basis(Instant.EPOCH, number, Optional.empty()),
                Map.of(Stage.INSTAR1, "7"),
                List.of(),
                Optional.empty(),
                Set.of(),
                "");
    }

    private static CalendarEntry entry(int number) {
        return new CalendarEntry("key", LocalDate.EPOCH, LocalDate.EPOCH, "Half moulted " + number, "");
    }

    /** Writes a file with contents that have this number in them. */
    private interface Writing {
        void write(Path file, int number);
    }

    /** A file, and what writes it. */
    private record Kept(String name, Writing writing) {
        @Override
        public String toString() {
            return name;
        }
    }
}
