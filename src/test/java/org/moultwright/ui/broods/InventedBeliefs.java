package org.moultwright.ui.broods;

import java.nio.file.Path;
import java.time.InstantSource;
import java.util.UUID;
import org.moultwright.exchange.TimingsFile;
import org.moultwright.ui.RoomFixture;
import org.moultwright.ui.shell.SaveLine;
import org.moultwright.workflow.BroodBook;
import org.moultwright.workflow.StateBelief;
import org.moultwright.workflow.UndoDeed;

/** What beliefs are kept with on a desk over any book. */
final class InventedBeliefs {
    private InventedBeliefs() {}

    static BeliefWays in(BroodBook book) {
        return in(book, (at, undo) -> {});
    }

    static BeliefWays in(BroodBook book, SaveLine saveLine) {
        InstantSource clock = InstantSource.fixed(RoomFixture.NOW);
        return new BeliefWays(
                new StateBelief(book, clock, UUID::randomUUID),
                new UndoDeed(book, clock, UUID::randomUUID),
                saveLine,
                TimingsFile.shipped(),
                Path.of("settings", TimingsFile.NAME));
    }
}
