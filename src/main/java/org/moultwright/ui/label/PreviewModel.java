package org.moultwright.ui.label;

import java.util.Optional;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyIntegerWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.scene.image.Image;
import org.moultwright.task.Job;
import org.moultwright.task.Outcome;
import org.moultwright.task.Runner;
import org.moultwright.ui.print.Pixels;
import org.moultwright.workflow.LabelJob;
import org.moultwright.workflow.LabelPrinter;

/** The sheet as it will be printed: which one is shown, and its picture, drawn aside. */
public final class PreviewModel {
    /** Twice the width it is shown at, so that codes stay crisp on dense screens. */
    private static final int PICTURE_PIXELS = 806;

    private final LabelPrinter printer;
    private final Runner runner;
    private final ReadOnlyObjectWrapper<Optional<LabelJob>> job = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyIntegerWrapper page = new ReadOnlyIntegerWrapper(0);
    private final ReadOnlyObjectWrapper<Optional<Image>> picture = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<Optional<RuntimeException>> fault =
            new ReadOnlyObjectWrapper<>(Optional.empty());
    private Optional<Job> drawing = Optional.empty();
    private int latest;

    public PreviewModel(LabelPrinter printer, Runner runner) {
        this.printer = printer;
        this.runner = runner;
    }

    /** The job shown; none while the form does not make one. */
    public ReadOnlyObjectProperty<Optional<LabelJob>> jobProperty() {
        return job.getReadOnlyProperty();
    }

    /** The sheet shown, from 0. */
    public ReadOnlyIntegerProperty pageProperty() {
        return page.getReadOnlyProperty();
    }

    ReadOnlyObjectProperty<Optional<Image>> pictureProperty() {
        return picture.getReadOnlyProperty();
    }

    /** Why there is no picture, if it could not be drawn. */
    public ReadOnlyObjectProperty<Optional<RuntimeException>> faultProperty() {
        return fault.getReadOnlyProperty();
    }

    public void show(Optional<LabelJob> next) {
        if (!next.equals(job.get())) {
            job.set(next);
            page.set(Math.min(page.get(), lastPage()));
            draw();
        }
    }

    /** Turns to a later sheet, or back. */
    public void turn(int by) {
        int turned = Math.max(0, Math.min(page.get() + by, lastPage()));
        if (turned != page.get()) {
            page.set(turned);
            draw();
        }
    }

    private int lastPage() {
        return job.get().map(LabelJob::sheets).orElse(1) - 1;
    }

    private void draw() {
        drawing.ifPresent(Job::cancel);
        int mine = ++latest;
        if (job.get().isEmpty()) {
            picture.set(Optional.empty());
            fault.set(Optional.empty());
            return;
        }
        LabelJob wanted = job.get().get();
        int wantedPage = page.get();
        drawing = Optional.of(runner.<Image>run(
                progress -> Pixels.image(printer.picture(wanted, wantedPage, PICTURE_PIXELS)),
                outcome -> drawn(mine, outcome)));
    }

    /** A picture that has been overtaken by a later one is dropped. */
    private void drawn(int mine, Outcome<Image> outcome) {
        if (mine != latest) {
            return;
        }
        if (outcome instanceof Outcome.Done<Image> done) {
            picture.set(Optional.of(done.value()));
            fault.set(Optional.empty());
        } else if (outcome instanceof Outcome.Failed<Image> failed) {
            picture.set(Optional.empty());
            fault.set(Optional.of(failed.fault()));
        }
    }
}
