package org.moultwright.boot;

import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import javafx.application.Platform;
import org.moultwright.boot.machine.DataFolders;
import org.moultwright.boot.machine.MachineReach;
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

    OpenWorkbench(Refusals refusals) {
        this.refusals = refusals;
    }

    @Override
    public Integer call() throws InterruptedException {
        boolean inDemo = demo || firstLook.isPresent();
        ToolkitStart.begin();
        SettingsFile settings = SettingsFile.atHome();
        Optional<String> notSpoken = DeskLanguage.speak(settings);
        Path file = store.orElseGet(this::usualStore);
        H2Store open = opened(file, inDemo);
        InstantSource clock = inDemo ? DemoRoom.clock(today) : InstantSource.system();
        Optional<DemoDoor> demoDoor = inDemo ? Optional.empty() : Optional.of(demoDoor(settings));
        Consumer<Desktop.Shown> whenShown = shown -> {
            notSpoken.ifPresent(shown.workbench()::tellOfLanguage);
            firstLook.ifPresent(folder -> FirstLook.take(shown, folder));
        };
        Desktop.show(
                inDemo ? DemoDoor.TITLE : Desktop.TITLE,
                () -> new Workbench(open, clock, settings, Platform::runLater, demoDoor, new MachineReach()),
                whenShown);
        return 0;
    }

    /** A keeper at the desk is told in a window why a store cannot be opened, and the command line as ever. */
    private H2Store opened(Path file, boolean inDemo) throws InterruptedException {
        try {
            return inDemo ? DemoRoom.open(file, today) : H2Store.open(file);
        } catch (StoreException | UncheckedIOException fault) {
            if (firstLook.isEmpty()) {
                refusals.tell(fault);
            }
            throw fault;
        }
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
        void tell(RuntimeException fault) throws InterruptedException;
    }
}
