package org.moultwright.boot;

import java.io.UncheckedIOException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import javafx.application.Platform;
import org.moultwright.boot.machine.DataFolders;
import org.moultwright.boot.machine.MachineReach;
import org.moultwright.settings.Settings;
import org.moultwright.settings.SettingsFile;
import org.moultwright.store.H2Store;
import org.moultwright.store.StoreException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** The program without a command: opens the workbench. */
@Command(
        name = "moultwright",
        mixinStandardHelpOptions = true,
        version = "Moultwright 0.1",
        description = "Opens the workbench, or runs one of the commands without a window.")
final class OpenWorkbench implements Callable<Integer> {
    @Option(names = "--store", paramLabel = "FILE", description = "the store (default: the keeper's own)")
    Optional<Path> store = Optional.empty();

    @Option(names = "--demo", description = "the demo brood room instead of a store of one's own")
    boolean demo;

    @Option(
            names = "--today",
            paramLabel = "INSTANT",
            description = "the demo room's now, such as 2026-04-09T19:00:00Z")
    Instant today = DemoRoom.USUAL_EVENING;

    @Option(
            names = "--first-look",
            paramLabel = "FOLDER",
            description = "leaves a picture of every screen of the demo room there, and ends")
    Optional<Path> firstLook = Optional.empty();

    private final Refusals refusals;
    private final Consumer<Desktop.Shown> watcher;
    private final LeftRooms left;

    OpenWorkbench(Refusals refusals) {
        this(refusals, shown -> {});
    }

    /** @param watcher is given the desk once it is on screen */
    OpenWorkbench(Refusals refusals, Consumer<Desktop.Shown> watcher) {
        this(refusals, watcher, LeftRooms.ofThisProgram());
    }

    OpenWorkbench(Refusals refusals, Consumer<Desktop.Shown> watcher, LeftRooms left) {
        this.refusals = refusals;
        this.watcher = watcher;
        this.left = left;
    }

    /**
     * Takes what a desk is opened with day by day, so that the whole command line need not be made for it; false for
     * anything else, which is left to the command line to read or to refuse.
     */
    boolean takes(String... arguments) {
        Deque<String> words = new ArrayDeque<>(List.of(arguments));
        boolean isDemo = words.removeFirstOccurrence("--demo");
        Optional<Path> named = Optional.empty();
        if (words.size() == 2
                && words.remove().equals("--store")
                && !words.element().startsWith("-")) {
            named = path(words.element());
        }
        boolean isTaken = words.isEmpty() || named.isPresent();
        if (isTaken) {
            // Only now: the command line turns round what stands here already.
            demo = isDemo;
            store = named;
        }
        return isTaken;
    }

    private static Optional<Path> path(String word) {
        try {
            return Optional.of(Path.of(word));
        } catch (InvalidPathException noFile) {
            return Optional.empty();
        }
    }

    @Override
    public Integer call() throws InterruptedException {
        boolean inDemo = demo || firstLook.isPresent();
        ToolkitStart.begin();
        SettingsFile settings = SettingsFile.atHome();
        Settings chosen = settings.glance();
        Optional<String> notSpoken = DeskLanguage.speak(chosen.place(), settings);
        // Pictures are as large on every machine.
        WindowFile kept = firstLook.isPresent() ? WindowFile.NONE : WindowFile.beside(settings);
        OpeningWindow opening = new OpeningWindow(inDemo ? DemoDoor.TITLE : Desktop.TITLE, chosen, kept);
        ToolkitStart.speaks(() -> opening.show(Rehearsal::play));
        try {
            OpenedRoom opened = opened(store.orElseGet(this::usualStore), inDemo, settings);
            Optional<DemoDoor> demoDoor = inDemo ? Optional.empty() : Optional.of(demoDoor(settings));
            Desktop.show(
                    opening,
                    () -> new Workbench(opened, settings, Platform::runLater, demoDoor, new MachineReach()),
                    shown -> {
                        notSpoken.ifPresent(shown.workbench()::tellOfLanguage);
                        firstLook.ifPresent(folder -> FirstLook.take(shown, folder));
                        watcher.accept(shown);
                    });
            return 0;
        } catch (StoreException | UncheckedIOException fault) {
            // A keeper at the desk is told in a window why a store cannot be opened, and the command line as ever.
            if (firstLook.isEmpty()) {
                refusals.tell(fault, opening);
            }
            throw fault;
        }
    }

    private OpenedRoom opened(Path file, boolean inDemo, SettingsFile settings) {
        return asLeft(file, inDemo, settings)
                .orElseGet(() -> inDemo
                        ? DemoRoom.opened(file, today, settings, left)
                        : OpenedRoom.of(H2Store.open(file), InstantSource.system(), settings, left));
    }

    /** The room as it was left; pictures for a script are of a store that is open. */
    private Optional<OpenedRoom> asLeft(Path file, boolean inDemo, SettingsFile settings) {
        Optional<LeftRooms.Found> found = firstLook.isPresent() ? Optional.empty() : left.find(file);
        return inDemo
                ? found.flatMap(room -> DemoRoom.asLeft(room, today, settings, left))
                : found.map(room -> OpenedRoom.asLeft(room, InstantSource.system(), settings, left));
    }

    private DemoDoor demoDoor(SettingsFile settings) {
        return new DemoDoor(demoStore(), today, settings, Platform::runLater);
    }

    private Path demoStore() {
        return DataFolders.demoStore(today.toString().substring(0, 10));
    }

    private Path usualStore() {
        if (firstLook.isPresent()) {
            return firstLook.get().resolve("demo.store");
        }
        return demo ? demoStore() : DataFolders.store();
    }

    /** Tells the keeper at the desk why it cannot be opened, and returns once that was read. */
    @FunctionalInterface
    interface Refusals {
        void tell(RuntimeException fault, OpeningWindow opening) throws InterruptedException;
    }
}
