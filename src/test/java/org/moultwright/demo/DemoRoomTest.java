package org.moultwright.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.moultwright.domain.Account;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.Ledger;
import org.moultwright.domain.code.PotCode;
import org.moultwright.exchange.PlainBroodFolders;
import org.moultwright.workflow.BroodFolders.FolderContent;

class DemoRoomTest {
    private static final Path TABLE = DemoRoomGenerator.DATA.resolve("trays.csv");

    @TempDir
    private Path temporary;

    static Stream<DemoBrood> broods() {
        return DemoBrood.ALL.stream();
    }

    @ParameterizedTest
    @MethodSource("broods")
    void theFoldersAreWhatTheGeneratorWrites(DemoBrood facts) throws IOException {
        Path fresh = temporary.resolve(facts.folder());
        new PlainBroodFolders().write(new DemoRoomGenerator(TABLE).record(facts), fresh);
        Path committed = DemoRoomGenerator.DATA.resolve(facts.folder());
        assertThat(names(committed)).isEqualTo(names(fresh));
        for (String name : names(fresh)) {
            assertThat(Files.mismatch(committed.resolve(name), fresh.resolve(name)))
                    .as("first differing byte of %s", name)
                    .isEqualTo(-1);
        }
    }

    @ParameterizedTest
    @MethodSource("broods")
    void theFoldersReadWithoutAProblemOrAnOpenQuestion(DemoBrood facts) {
        FolderContent content = read(facts);
        assertThat(content.problems()).isEmpty();
        assertThat(content.notices()).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("broods")
    void atEveryCheckAliveAndDeadAndPottedAreAllThatWerePutIn(DemoBrood facts) throws IOException {
        BroodRecord record = read(facts).record().orElseThrow();
        for (DemoBrood.DemoTray tray : facts.trays()) {
            List<DemoCounts.Row> rows = DemoCounts.ofTray(TABLE, tray.code());
            int start = rows.get(0).aliveInAll() + rows.get(0).deadInAll();
            for (DemoCounts.Row row : rows) {
                assertThat(row.losses().stream()
                                .mapToInt(DemoCounts.Loss::count)
                                .sum())
                        .isEqualTo(row.deadRemoved());
                int pottedBefore = row.pottedInAll() - row.pottedAfterCount();
                assertThat(row.aliveInAll() + row.deadInAll() + pottedBefore)
                        .as("%s on %s", tray.code(), row.date())
                        .isEqualTo(start);
                Instant at = tray.check(row.date());
                assertThat(record.ledger().at(at).balance(Account.tray(tray.code())))
                        .as("ledger of %s on %s", tray.code(), row.date())
                        .isEqualTo(row.aliveInAll());
                assertThat(countedAt(record, tray.code(), at)).isEqualTo(row.aliveInAll());
            }
        }
    }

    @Test
    void theYieldsAreThoseOfTheStory() {
        assertYield(DemoBrood.ALL.get(0), 106, 118);
        assertYield(DemoBrood.ALL.get(1), 59, 94);
        assertYield(DemoBrood.ALL.get(2), 57, 71);
    }

    @Test
    void aMiscountOfOneIsWrittenAndCorrectedTheNextEvening() {
        DemoBrood.DemoTray a2 = DemoBrood.ALL.get(0).trays().get(1);
        BroodRecord record = read(DemoBrood.ALL.get(0)).record().orElseThrow();
        assertThat(countedAt(record, "A2", a2.check(LocalDate.parse("2026-03-26"))))
                .isEqualTo(57);
        assertThat(countedAt(record, "A2", a2.check(LocalDate.parse("2026-03-27"))))
                .isEqualTo(58);
    }

    private void assertYield(DemoBrood facts, int potted, int opened) {
        BroodRecord record = read(facts).record().orElseThrow();
        Ledger ledger = record.ledger();
        assertThat(ledger.balance(Account.POTTED)).isEqualTo(potted);
        assertThat(ledger.opened()).isEqualTo(opened);
        assertThat(ledger.aliveInTrays()).isZero();
        assertThat(record.pots()).hasSize(potted);
        assertThat(record.pots())
                .allSatisfy(
                        pot -> assertThat(PotCode.read(pot.code()).symbols()).isPresent());
    }

    private static int countedAt(BroodRecord record, String tray, Instant at) {
        return record.checks().stream()
                .filter(check -> check.tray().equals(tray) && check.at().equals(at))
                .mapToInt(check -> check.total().orElse(-1))
                .findFirst()
                .orElse(-1);
    }

    private static FolderContent read(DemoBrood facts) {
        return new PlainBroodFolders().read(DemoRoomGenerator.DATA.resolve(facts.folder()));
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }
}
