package org.moultwright.boot;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.moultwright.exchange.PlainBroodFolders;
import org.moultwright.language.Texts;
import org.moultwright.settings.SettingsFile;
import org.moultwright.store.H2Store;
import org.moultwright.workflow.Deed;
import org.moultwright.workflow.TakeInFolders;
import org.moultwright.workflow.WrittenRoom;

/** The demo brood room, cut at one evening: an invented keeper's three broods. */
final class DemoRoom {
    /** The evening it opens at unless another is asked for: the first slings. */
    static final Instant USUAL_EVENING = LocalDateTime.of(2026, 5, 3, 19, 41).toInstant(ZoneOffset.UTC);

    private DemoRoom() {}

    /**
     * The demo room at an evening. A visitor who wrote later than that goes on from there: a clock begun anew would hide
     * what was written until it comes round again.
     */
    static OpenedRoom opened(Path file, Instant evening, SettingsFile settings, LeftRooms left) {
        H2Store store = open(file, evening);
        InstantSource clock = clock(evening, store.book().latestDeeds(WrittenRoom.DEEDS_LOOKED_AT));
        return OpenedRoom.of(store, clock, settings, left);
    }

    /** The same as it was left, if all broods are in it. */
    static Optional<OpenedRoom> asLeft(LeftRooms.Found found, Instant evening, SettingsFile settings, LeftRooms left) {
        return isFilled(found.room().broods().size())
                ? Optional.of(
                        OpenedRoom.asLeft(found, clock(evening, found.room().latestDeeds()), settings, left))
                : Optional.empty();
    }

    /** Opens a demo store; one that is new, or was left before all broods were in it, is filled. */
    static H2Store open(Path file, Instant today) {
        H2Store store = H2Store.open(file);
        try {
            if (!isFilled(store.book().broods().size())) {
                fill(store, today);
            }
            return store;
        } catch (RuntimeException fault) {
            store.close();
            throw fault;
        }
    }

    private static boolean isFilled(int broods) {
        return broods >= folders().size();
    }

    private static InstantSource clock(Instant evening, List<Deed.Summary> latestDeeds) {
        return clock(latestDeeds.stream()
                .map(Deed.Summary::doneAt)
                .filter(evening::isBefore)
                .max(Comparator.naturalOrder())
                .orElse(evening));
    }

    /** A clock that reads {@code today} now and runs on at this machine's pace. */
    private static InstantSource clock(Instant today) {
        InstantSource machine = InstantSource.system();
        return InstantSource.offset(machine, Duration.between(machine.instant(), today));
    }

    /** Fills a store with what was known of the demo broods at an instant. */
    static void fill(H2Store store, Instant today) {
        TakeInFolders takeIn = new TakeInFolders(new PlainBroodFolders(), store.book());
        for (Path folder : folders()) {
            TakeInFolders.Result result = takeIn.takeInUntil(folder, today);
            if (result.takenIn().isEmpty()) {
                throw new IllegalStateException("the demo brood in " + folder + " has problems: " + result.problems());
            }
        }
    }

    private static List<Path> folders() {
        Path home = Path.of(System.getProperty("moultwright.home", "."), "demo-data")
                .toAbsolutePath()
                .normalize();
        try (Stream<Path> inside = Files.list(home)) {
            return inside.filter(Files::isDirectory).sorted().toList();
        } catch (IOException missing) {
            throw new UncheckedIOException(Texts.say("The demo broods are not at '{0}'.", home), missing);
        }
    }
}
