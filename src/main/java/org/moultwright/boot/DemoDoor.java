package org.moultwright.boot;

import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import javafx.stage.Stage;
import org.moultwright.language.Texts;
import org.moultwright.settings.SettingsFile;
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
            runner.<OpenedRoom>run(progress -> opened(), outcome -> {
                opening = false;
                if (outcome instanceof Outcome.Done<OpenedRoom> done) {
                    show(done.value());
                    opened.run();
                } else if (outcome instanceof Outcome.Failed<OpenedRoom> failed) {
                    refused.accept(failed.fault());
                }
            });
        }
    }

    @Override
    public void close() {
        window.ifPresent(Stage::close);
    }

    private OpenedRoom opened() {
        return DemoRoom.opened(file, evening, settings, LeftRooms.ofThisProgram());
    }

    private void show(OpenedRoom opened) {
        Workbench demo = new Workbench(opened, settings, toolkit, Optional.empty(), AlarmReach.NOBODY);
        window = Optional.of(DeskWindow.show(demo, DeskWindow.stage(TITLE), () -> window = Optional.empty()));
    }
}
