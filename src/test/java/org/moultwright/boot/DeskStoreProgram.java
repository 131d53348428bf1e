package org.moultwright.boot;

import java.io.IOException;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.UUID;
import org.moultwright.domain.AlarmEntry;
import org.moultwright.domain.AlarmLimits;
import org.moultwright.store.H2Store;
import org.moultwright.workflow.KeepWatch;
import org.moultwright.workflow.WatchListener;
import org.moultwright.workflow.WatchPlaces;
import org.moultwright.workflow.WatchView;

/** What the desk does with its store, without a window, until nobody listens any more; prints what it shows. */
final class DeskStoreProgram {
    static final String OPEN = "open";
    static final String WATCHED = "watched ";

    private DeskStoreProgram() {}

    public static void main(String[] arguments) throws IOException {
        try (H2Store store = H2Store.open(Path.of(arguments[0]))) {
            KeepWatch watch = new KeepWatch(
                    store.alarms(),
                    store.readings(),
                    InstantSource.system(),
                    System::nanoTime,
                    UUID::randomUUID,
                    WatchPlaces.NONE,
                    AlarmLimits.USUAL,
                    new Printing());
            try (DeskIntake intake = new DeskIntake(store, watch, Runnable::run)) {
                intake.besideProperty()
                        .addListener((observed, before, now) -> now.latest()
                                .forEach((probe, reading) ->
                                        say(probe + " " + reading.takenAt() + " " + reading.temperatureCelsius())));
                say(OPEN);
                while (System.in.read() >= 0) {
                    watch.tick();
                }
            }
        }
    }

    private static void say(String words) {
        System.out.println(words);
        System.out.flush();
    }

    private static final class Printing implements WatchListener {
        @Override
        public void turned(AlarmEntry entry) {
            say(entry.toString());
        }

        @Override
        public void stands(WatchView view) {
            view.places().forEach(place -> say(WATCHED + place.probe()));
        }
    }
}
