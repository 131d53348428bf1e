package org.moultwright.boot.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.moultwright.domain.AlarmEntry;
import org.moultwright.domain.AlarmLimits;
import org.moultwright.domain.Quality;
import org.moultwright.domain.Reading;
import org.moultwright.store.H2Store;
import org.moultwright.workflow.KeepWatch;
import org.moultwright.workflow.ReadingLog.Logged;
import org.moultwright.workflow.TakenBeside;
import org.moultwright.workflow.WatchListener;
import org.moultwright.workflow.WatchPlaces;
import org.moultwright.workflow.WatchView;

/** The watch of a logger is kept while it has the store, and by nobody here while another has it. */
class LogWatchTest {
    private static final Instant NOW = Instant.parse("2026-03-01T20:00:00Z");

    @TempDir
    Path folder;

    private final List<String> told = new ArrayList<>();
    private WatchView view = WatchView.NOTHING;
    private int views;

    @Test
    void itGoesWithTheStore() {
        LogWatch watch = new LogWatch("P-1", this::watch, told::add);
        watch.heard("P-1", reading(25));
        watch.tick();
        assertThat(views).as("nobody watches before the store is here").isZero();
        try (H2Store store = H2Store.open(folder.resolve("room.store"))) {
            watch.has(store);
            watch.heard("P-1", reading(26));
            assertThat(view.places()).extracting(WatchView.Place::celsius).containsExactly(26.0);
            watch.taken(List.of(new TakenBeside("P-2", List.of(new Logged(reading(27), "27")))));
            assertThat(view.places()).extracting(WatchView.Place::probe).containsExactly("P-1", "P-2");
            watch.leftTo("process 7");
        }
        int viewsUntilThen = views;
        watch.heard("P-1", reading(28));
        watch.tick();
        assertThat(views).as("it is watched where the store is now").isEqualTo(viewsUntilThen);
        assertThat(told)
                .containsExactly(
                        "The store is kept here: readings go into it, and alarms are watched here.",
                        "The store is left to another Moultwright (process 7). Readings are kept beside it and taken"
                                + " in there; alarms are watched there.");
    }

    private KeepWatch watch(H2Store store) {
        return new KeepWatch(
                store.alarms(),
                store.readings(),
                InstantSource.fixed(NOW),
                () -> 0,
                UUID::randomUUID,
                WatchPlaces.NONE,
                AlarmLimits.USUAL,
                new WatchListener() {
                    @Override
                    public void turned(AlarmEntry entry) {
                        told.add(entry.toString());
                    }

                    @Override
                    public void stands(WatchView stands) {
                        view = stands;
                        views++;
                    }
                });
    }

    private static Reading reading(double celsius) {
        return new Reading(NOW, celsius, Double.NaN, Quality.GOOD);
    }
}
