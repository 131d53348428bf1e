package org.moultwright.boot;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Executor;
import org.moultwright.task.BackgroundRunner;

/** Who works aside for a desk, and how each is ended: what is on its way to the disk comes there first. */
final class DeskRunners {
    /** How long a link may take to end; opening a port that does not answer takes longest. */
    private static final Duration LONGEST_ENDING = Duration.ofSeconds(5);

    private final Executor toolkit;
    private final BackgroundRunner reading;
    private final DeskTools.Runners others;

    /** One to each wire, since listening to one never ends. */
    private final List<BackgroundRunner> lines = new ArrayList<>();

    /** @param toolkit runs something on the toolkit's thread */
    DeskRunners(Executor toolkit) {
        this.toolkit = toolkit;
        this.reading = new BackgroundRunner("desk work", toolkit);
        this.others = new DeskTools.Runners(
                new BackgroundRunner("keeper's entries", toolkit),
                new BackgroundRunner("begun sheets", toolkit),
                new BackgroundRunner("brood folders", toolkit),
                new BackgroundRunner("what if", toolkit));
    }

    /** Reads what the desk shows. */
    BackgroundRunner reading() {
        return reading;
    }

    /** All others that screens work with. */
    DeskTools.Runners others() {
        return others;
    }

    /** One of its own for a wire. */
    BackgroundRunner line() {
        BackgroundRunner made = new BackgroundRunner("probe log", toolkit);
        lines.add(made);
        return made;
    }

    /** Waits for what probes said until now. */
    void finishLines() {
        lines.forEach(line -> line.finish(LONGEST_ENDING));
    }

    /** Waits for what the keeper entered, and breaks the rest off. */
    void finish() {
        reading.close();
        others.keeper().finish(LONGEST_ENDING);
        others.typed().finish(LONGEST_ENDING);
        others.intake().close();
        others.whatIf().close();
    }
}
