package org.moultwright.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.moultwright.domain.Cause;
import org.moultwright.domain.Stage;
import org.moultwright.file.SmallDisk;
import org.moultwright.workflow.DocumentException;
import org.moultwright.workflow.RoundSheet;
import org.moultwright.workflow.SheetDraft;

class DraftsFileTest {
    private static final SheetDraft FULL = new SheetDraft(
            "CC-26-A",
            "A1",
            new SheetDraft.Basis(
                    Instant.parse("2026-05-03T20:41:00Z"), 56, Optional.of(Instant.parse("2026-05-02T19:00:00.5Z"))),
            Map.of(Stage.INSTAR1, "34", Stage.DARKENED, "7/", Stage.INSTAR2, "none"),
            List.of(new RoundSheet.Loss(Stage.INSTAR1, Cause.FAILED_MOULT, 2)),
            Optional.of(new RoundSheet.Mould("shells", "speck", "removed")),
            Set.of("watered", "turned"),
            "lid \"ajar\"\nagain");

    @TempDir
    private Path folder;

    @Test
    void whatIsKeptIsReadAgain() {
        DraftsFile<SheetDraft> file = DraftsFile.ofSheets(place());
        List<SheetDraft> drafts = List.of(FULL, DraftsProgram.counted(3));
        file.keep(drafts);
        assertThat(DraftsFile.ofSheets(place()).load()).isEqualTo(new DraftsFile.Loaded<>(drafts, Optional.empty()));
        file.keep(List.of());
        assertThat(folder).isEmptyDirectory();
        assertThat(file.load().drafts()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "{",
                "{\"format\":\"moultwright-sheets/2\",\"sheets\":[]}",
                "{\"format\":\"moultwright-sheets/1\",\"sheets\":[{\"brood\":\"CC-26-A\"}]}"
            })
    void whatIsNotUnderstoodIsSetAsideAndNeverWrittenOver(String content) throws IOException {
        for (int time = 1; time <= 2; time++) {
            Files.writeString(place(), content);
            DraftsFile<SheetDraft> file = DraftsFile.ofSheets(place());
            Path aside = folder.resolve("own.sheets.not-understood-" + time);
            assertThat(file.load().problem())
                    .hasValueSatisfying(said -> assertThat(said).contains(aside.toString()));
            file.keep(List.of(FULL));
            assertThat(aside).hasContent(content);
            assertThat(DraftsFile.ofSheets(place()).load().drafts()).containsExactly(FULL);
        }
    }

    @Test
    void whatCannotBeReadIsLeftAsItIs() throws IOException {
        Files.createDirectory(place());
        DraftsFile<SheetDraft> file = DraftsFile.ofSheets(place());
        assertThat(file.load().problem()).isPresent();
        assertThatThrownBy(() -> file.keep(List.of(FULL))).isInstanceOf(DocumentException.class);
        assertThat(place()).isEmptyDirectory();
    }

    @Test
    void whereNothingMoreCanBeWrittenTheOneBeforeStays() {
        Optional<SmallDisk> made = SmallDisk.at(folder, 1);
        assumeThat(made).as("this machine lets a program make a small disk").isPresent();
        try (SmallDisk disk = made.orElseThrow()) {
            DraftsFile<SheetDraft> file = DraftsFile.ofSheets(place());
            file.keep(List.of(FULL));
            disk.fillToTheBrim();
            assertThatThrownBy(() -> file.keep(List.of(FULL, DraftsProgram.counted(3))))
                    .isInstanceOf(DocumentException.class)
                    .hasMessageContaining("own.sheets cannot be written");
            assertThat(file.load().drafts()).containsExactly(FULL);
        }
    }

    /** The last count said to be kept, or the one after, is there whole, however the program ends. */
    @Test
    void aKilledProgramLeavesWhatItKept() throws Exception {
        Process program = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        DraftsProgram.class.getName(),
                        place().toString())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        int said = 0;
        try (BufferedReader lines = program.inputReader()) {
            while (said < 50) {
                said = Integer.parseInt(lines.readLine());
            }
            // Through its handle, for then what it said before stays to be read.
            program.toHandle().destroyForcibly();
            program.onExit().join();
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                said = Integer.parseInt(line);
            }
        }
        assertThat(DraftsFile.ofSheets(place()).load().drafts())
                .isSubsetOf(DraftsProgram.counted(said), DraftsProgram.counted(said + 1))
                .hasSize(1);
    }

    private Path place() {
        return folder.resolve("own.sheets");
    }
}
