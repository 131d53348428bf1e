package org.moultwright.ui.broods;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import org.moultwright.task.Job;
import org.moultwright.task.Outcome;
import org.moultwright.workflow.BroodFolders.FolderProblem;
import org.moultwright.workflow.TakeInFolders;

/** A brood folder on its way in: chosen, read aside, taken in whole or refused with all that is wrong in it. */
final class TakeInViewModel {
    private final WaysIn ways;
    private final Runnable readAgain;
    private final ReadOnlyObjectWrapper<State> state = new ReadOnlyObjectWrapper<>(new Idle());
    private final ReadOnlyStringWrapper progress = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper news = new ReadOnlyStringWrapper("");
    private Optional<Job> running = Optional.empty();

    TakeInViewModel(WaysIn ways, Runnable readAgain) {
        this.ways = ways;
        this.readAgain = readAgain;
    }

    ReadOnlyObjectProperty<State> stateProperty() {
        return state.getReadOnlyProperty();
    }

    /** How far a running one is, in words. */
    ReadOnlyStringProperty progressProperty() {
        return progress.getReadOnlyProperty();
    }

    /** What was just taken in, or why nothing was, in a sentence; possibly empty. */
    ReadOnlyStringProperty newsProperty() {
        return news.getReadOnlyProperty();
    }

    /** Asks for a folder and takes it in. */
    void choose() {
        ways.folders().choose().ifPresent(this::takeIn);
    }

    void takeIn(Path folder) {
        news.set("");
        progress.set(TakeInWords.reading(folder));
        state.set(new Running(folder));
        Job job = ways.intakeRunner()
                .<TakeInFolders.Result>run(
                        work -> ways.intake().takeIn(folder, work),
                        (fraction, words) -> progress.set(words),
                        outcome -> ended(folder, outcome));
        running = Optional.of(job);
    }

    /** Asks the running one to stop; what it had read is not kept. */
    void cancel() {
        running.ifPresent(Job::cancel);
    }

    /** Goes back to the broods. */
    void close() {
        state.set(new Idle());
    }

    private void ended(Path folder, Outcome<TakeInFolders.Result> outcome) {
        if (outcome instanceof Outcome.Done<TakeInFolders.Result> done) {
            ended(folder, done.value());
        } else if (outcome instanceof Outcome.Failed<TakeInFolders.Result> failed) {
            state.set(new Refused(folder, TakeInWords.failed(folder, failed.fault()), List.of()));
        } else {
            news.set(TakeInWords.cancelled(folder));
            close();
        }
    }

    private void ended(Path folder, TakeInFolders.Result result) {
        if (result.takenIn().isEmpty()) {
            state.set(new Refused(
                    folder, TakeInWords.refused(folder, result.problems().size()), result.problems()));
            return;
        }
        String sentence =
                TakeInWords.takenIn(result.brood().orElse(""), result.takenIn().get());
        readAgain.run();
        if (result.notices().isEmpty()) {
            news.set(sentence);
            close();
        } else {
            state.set(new TakenIn(sentence, result.notices()));
        }
    }

    /** How far a folder is on its way in. */
    sealed interface State {}

    /** None is. */
    record Idle() implements State {}

    record Running(Path folder) implements State {}

    /**
     * Nothing of it was taken in.
     *
     * @param problems what to mend, empty where the folder itself is sound
     */
    record Refused(Path folder, String sentence, List<FolderProblem> problems) implements State {
        Refused {
            problems = List.copyOf(problems);
        }
    }

    /**
     * All of it was.
     *
     * @param notices what the keeper should know of it
     */
    record TakenIn(String sentence, List<String> notices) implements State {
        TakenIn {
            notices = List.copyOf(notices);
        }
    }
}
