package org.moultwright.ui.takealong;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.moultwright.compute.forecast.Forecaster;
import org.moultwright.exchange.PlainBroodFolders;
import org.moultwright.exchange.TimingsFile;
import org.moultwright.store.H2Store;
import org.moultwright.workflow.Room;
import org.moultwright.workflow.TakeInFolders;

/** A sitter reads the displays of what holds animals; a mother's box, from which the sac is gone, is none of them. */
class SheetOfSitterTest {
    @Test
    void onlyDisplaysAroundAnimalsAreNamed(@TempDir Path folder) {
        try (H2Store store = H2Store.open(folder.resolve("sitter.store"))) {
            TakeInFolders takeIn = new TakeInFolders(new PlainBroodFolders(), store.book());
            takeIn.takeIn(Path.of("demo-data/cc-26-a"));
            takeIn.takeIn(Path.of("demo-data/cc-26-c"));
            Room room = new Room(store.book(), store.readings(), new Forecaster(TimingsFile.shipped())::forecast);
            assertThat(SheetOfSitter.usual(room.at(Instant.parse("2026-05-03T20:00:00Z"))))
                    .contains("28.3 °C (INC-1)");
        }
    }
}
