package org.moultwright.ui.finder;

import java.util.List;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.moultwright.language.Texts;
import org.moultwright.task.NewestQuestion;
import org.moultwright.task.Outcome;
import org.moultwright.workflow.LineForms;

/** A profile being written: its test lines are tried with every change, and it is kept only once all of them hold. */
final class ProfileViewModel {
    private final FinderDesk desk;
    private final Runnable kept;
    private final StringProperty text = new SimpleStringProperty("");
    private final ObservableList<String> problems = FXCollections.observableArrayList();
    private final ReadOnlyBooleanWrapper usable = new ReadOnlyBooleanWrapper();
    private final ReadOnlyStringWrapper told = new ReadOnlyStringWrapper("");
    private final NewestQuestion<String, Checked> checker;

    /** @param kept is told, on the thread of the screen, that there is another profile now */
    ProfileViewModel(FinderDesk desk, Runnable kept) {
        this.desk = desk;
        this.kept = kept;
        this.checker = new NewestQuestion<>(
                desk.runner(), written -> new Checked(written, desk.forms().check(lines(written))), this::checked);
        text.addListener((observed, before, now) -> {
            usable.set(false);
            checker.ask(now);
        });
    }

    StringProperty textProperty() {
        return text;
    }

    /** All that is wrong, each with its line. */
    ObservableList<String> problems() {
        return problems;
    }

    /** Whether all its test lines hold as it stands. */
    ReadOnlyBooleanProperty usableProperty() {
        return usable.getReadOnlyProperty();
    }

    ReadOnlyStringProperty toldProperty() {
        return told.getReadOnlyProperty();
    }

    /** The forms there are, to start from. */
    List<String> codes() {
        return desk.links().profiles();
    }

    /** Puts the text of a form there is in the place of what is written. */
    void startFrom(String code) {
        desk.runner().run(progress -> desk.forms().text(code), outcome -> {
            if (outcome instanceof Outcome.Done<List<String>> done) {
                text.set(String.join("\n", done.value()));
            } else if (outcome instanceof Outcome.Failed<List<String>> failed) {
                told.set(Texts.say("It cannot be read: {0}", failed.fault().getMessage()));
            }
        });
    }

    /** Keeps it in the keeper's folder; usable at once. */
    void save() {
        String written = text.get();
        desk.runner().run(progress -> new Checked(written, desk.forms().save(lines(written))), this::savedOrNot);
    }

    private void savedOrNot(Outcome<Checked> outcome) {
        if (outcome instanceof Outcome.Done<Checked> done) {
            checked(outcome);
            if (done.value().found().problems().isEmpty()) {
                told.set(Texts.say(
                        "Kept. It can be chosen as {0}.",
                        done.value().found().code().orElse("")));
                kept.run();
            }
        } else if (outcome instanceof Outcome.Failed<Checked> failed) {
            told.set(Texts.say(
                    "Not kept: {0}. What you wrote stays here.", failed.fault().getMessage()));
        }
    }

    private void checked(Outcome<Checked> outcome) {
        if (outcome instanceof Outcome.Failed<Checked> failed) {
            told.set(Texts.say("It cannot be checked: {0}", failed.fault().getMessage()));
        } else if (outcome instanceof Outcome.Done<Checked> done
                && done.value().text().equals(text.get())) {
            LineForms.Checked found = done.value().found();
            problems.setAll(found.problems().stream().map(FinderWords::problem).toList());
            usable.set(found.problems().isEmpty());
            told.set(summary(found));
        }
    }

    private static String summary(LineForms.Checked found) {
        int count = found.problems().size();
        if (count == 0) {
            return Texts.say("All its test lines hold. It can be kept.");
        }
        return Texts.count(
                count,
                "One thing is wrong; it cannot be used yet.",
                "{0} things are wrong; it cannot be used yet.",
                count);
    }

    private static List<String> lines(String text) {
        return text.lines().toList();
    }

    /** What was found of a text; by then the keeper may have written on. */
    private record Checked(String text, LineForms.Checked found) {}
}
