package org.moultwright.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.moultwright.domain.AlarmEntry;
import org.moultwright.domain.AlarmKind;
import org.moultwright.domain.AlarmTurn;

class AlarmJournalStoreTest {
    private static final Instant START = Instant.parse("2026-03-01T00:00:00Z");

    @TempDir
    Path folder;

    @Test
    void everyLineComesBackInTheOrderWrittenAndOnce() {
        List<AlarmEntry> lines = new ArrayList<>();
        for (AlarmKind kind : AlarmKind.values()) {
            for (AlarmTurn turn : AlarmTurn.values()) {
                // Written in the order things happened, whatever the wall clock said.
                Instant at = START.plusSeconds(lines.size() % 7 * 100L);
                boolean isSnooze = turn == AlarmTurn.SNOOZED;
                lines.add(new AlarmEntry(
                        UUID.randomUUID(),
                        at,
                        lines.size() % 2 == 0 ? "box" : "other box",
                        kind,
                        turn,
                        isSnooze ? Double.NaN : 27.5,
                        isSnooze ? Optional.of(at.plusSeconds(600)) : Optional.empty()));
            }
        }
        Path file = folder.resolve("room.store");
        try (H2Store store = H2Store.open(file)) {
            store.alarms().append(lines);
            store.alarms().append(lines.subList(0, 5));
        }
        try (H2Store store = H2Store.open(file)) {
            assertThat(store.alarms().between(Instant.EPOCH, START.plusSeconds(10_000)))
                    .isEqualTo(lines);
            assertThat(store.alarms().of("box"))
                    .isEqualTo(lines.stream()
                            .filter(line -> line.container().equals("box"))
                            .toList());
            assertThat(store.alarms().between(START.plusSeconds(100), START.plusSeconds(200)))
                    .isNotEmpty()
                    .allMatch(line -> line.at().equals(START.plusSeconds(100)));
            assertThat(store.check().problems()).isEmpty();
        }
    }
}
