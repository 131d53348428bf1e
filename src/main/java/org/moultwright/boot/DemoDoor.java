package org.moultwright.boot;

import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import javafx.stage.Stage;
import org.moultwright.language.Texts;
import org.moultwright.settings.SettingsFile;
import org.moultwright.store.H2Store;
import org.moultwright.task.Outcome;
import org.moultwright.task.Runner;
import org.moultwright.ui.alarm.AlarmReach;

/** Leads from the keeper's desk to the demo room, which opens in a window of its own and closes with the desk. */
final class DemoDoor implements AutoCloseable {
    static final String TITLE = Texts.say("Moultwright, demo room");

    private final Path file;
    private final Instant evening;
    private final SettingsFile settings;
    private final Executor toolkit;
    private Optional<Stage> window = Optional.empty();
    private boolean opening;

    DemoDoor(Path file, Instant evening, SettingsFile settings, Executor toolkit) {
        this.file = file;
        this.evening = evening;
        this.settings = settings;
        this.toolkit = toolkit;
    }

    /**
     * Opens the demo room, or brings it to the front.
     *
     * @param runner makes its store aside
     * @param opened is told once it stands open
     * @param refused is told why it cannot be opened
     */
    void open(Runner runner, Runnable opened, Consumer<RuntimeException> refused) {
        if (window.isPresent()) {
            window.get().toFront();
            opened.run();
        } else if (!opening) {
            opening = true;
            runner.<H2Store>run(progress -> DemoRoom.open(file, evening), outcome -> {
                opening = false;
                if (outcome instanceof Outcome.Done<H2Store> done) {
                    show(done.value());
                    opened.run();
                } else if (outcome instanceof Outcome.Failed<H2Store> failed) {
                    refused.accept(failed.fault());
                }
            });
        }
    }

    @Override
    public void close() {
        window.ifPresent(Stage::close);
    }

    private void show(H2Store store) {
        Workbench demo =
                new Workbench(store, DemoRoom.clock(evening), settings, toolkit, Optional.empty(), AlarmReach.NOBODY);
        window = Optional.of(DeskWindow.show(demo, TITLE, () -> window = Optional.empty()));
    }
}
