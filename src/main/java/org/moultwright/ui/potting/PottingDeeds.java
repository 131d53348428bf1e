package org.moultwright.ui.potting;

import java.util.Optional;
import org.moultwright.language.Texts;
import org.moultwright.task.Outcome;
import org.moultwright.ui.label.LabelNews;
import org.moultwright.workflow.Deed;
import org.moultwright.workflow.PotSlings.Potting;

/** Writes down what really went into pots, and takes it back. */
final class PottingDeeds {
    private final PottingDesk desk;
    private final LabelNews news;
    private final Runnable clearBench;
    private boolean saving;

    /** @param clearBench takes off the bench what no longer is there */
    PottingDeeds(PottingDesk desk, LabelNews news, Runnable clearBench) {
        this.desk = desk;
        this.news = news;
        this.clearBench = clearBench;
    }

    /**
     * Keeps a potting, one at a time.
     *
     * @param whenKept is told once it is on disk, before the room is read again
     */
    void keep(Potting potting, Runnable whenKept) {
        if (saving) {
            return;
        }
        saving = true;
        desk.runner().<Deed.Summary>run(progress -> desk.potSlings().save(potting), outcome -> {
            saving = false;
            if (outcome instanceof Outcome.Done<Deed.Summary> done) {
                desk.saveLine().saved(done.value().doneAt(), this::takeBack);
                clearBench.run();
                whenKept.run();
                desk.readAgain().run();
                news.done(PottingWords.kept(done.value().words()));
            } else if (outcome instanceof Outcome.Failed<Deed.Summary> failed) {
                news.failed(failed.fault(), Texts.say("Not saved"));
            }
        });
    }

    private void takeBack() {
        desk.runner().<Optional<Deed.Summary>>run(progress -> desk.undo().undo(), outcome -> {
            if (outcome instanceof Outcome.Failed<Optional<Deed.Summary>> failed) {
                news.failed(failed.fault(), Texts.say("Not undone"));
                return;
            }
            clearBench.run();
            desk.readAgain().run();
            news.done(PottingWords.UNDONE);
        });
    }
}
