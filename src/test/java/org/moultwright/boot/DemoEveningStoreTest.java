package org.moultwright.boot;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.moultwright.domain.CareNote;
import org.moultwright.settings.SettingsFile;
import org.moultwright.workflow.Deed;

/** When the demo room is, the first time and after something was written in it. */
class DemoEveningStoreTest {
    private static final Instant EVENING = DemoRoom.USUAL_EVENING;
    private static final Duration A_SLOW_MACHINE = Duration.ofMinutes(5);

    @TempDir
    private Path folder;

    @Test
    void goesOnFromWhatWasWrittenLast() {
        Instant later = EVENING.plus(Duration.ofMinutes(40));
        assertThat(written(later)).isBetween(EVENING, EVENING.plus(A_SLOW_MACHINE));
        assertThat(written(EVENING.plus(Duration.ofMinutes(10)))).isBetween(later, later.plus(A_SLOW_MACHINE));
        assertThat(written(later)).as("though the clock was set back meanwhile").isAfterOrEqualTo(later);
    }

    /** Opens the room, waters a tray at an instant, and closes it; tells the room's now. */
    private Instant written(Instant at) {
        OpenedRoom room = DemoRoom.opened(
                folder.resolve("demo.store"),
                EVENING,
                new SettingsFile(folder.resolve("settings.txt")),
                DeskRoom.NOT_KEPT);
        try {
            CareNote watered = new CareNote(UUID.randomUUID(), at, "A1", CareNote.WATERED, "");
            room.book()
                    .keep(new Deed(
                            new Deed.Summary(UUID.randomUUID(), "CC-26-A", at, "A1 watered"),
                            Optional.empty(),
                            new Deed.Content(List.of(), List.of(), List.of(), List.of(watered), List.of())));
            return room.clock().instant();
        } finally {
            room.store().close();
        }
    }
}
