package org.moultwright.store;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.moultwright.domain.Quality;
import org.moultwright.domain.Reading;
import org.moultwright.workflow.Deed;
import org.moultwright.workflow.UndoDeed;

/** Takes many readings in as one file and takes them back, over and over, until it is killed; prints each once done. */
final class FileTaker {
    static final String PROBE = "P-9";
    static final int READINGS = 20_000;
    static final String IN = "in.";
    static final String OUT = "out.";

    private static final Instant START = Instant.parse("2026-03-01T20:00:00Z");

    private FileTaker() {}

    public static void main(String[] arguments) {
        H2Store store = H2Store.open(Path.of(arguments[0]));
        UndoDeed undo = new UndoDeed(store.book(), Instant::now, UUID::randomUUID);
        while (undo.next().isPresent()) {
            undo.undo();
        }
        System.out.println(OUT);
        while (true) {
            takeIn(store);
            System.out.println(IN);
            undo.undo();
            System.out.println(OUT);
        }
    }

    private static void takeIn(H2Store store) {
        Deed.Summary summary = new Deed.Summary(UUID.randomUUID(), Optional.empty(), START, "Taken in");
        store.bulkReadings()
                .takeIn(
                        summary,
                        sink -> {
                            for (int number = 0; number < READINGS; number++) {
                                Instant at = START.plus(Duration.ofSeconds(30L * number));
                                sink.accept(PROBE, new Reading(at, 26 + number % 7 / 10.0, 70, Quality.GOOD));
                            }
                        },
                        List::of);
    }
}
