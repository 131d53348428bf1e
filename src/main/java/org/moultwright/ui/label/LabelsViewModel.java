package org.moultwright.ui.label;

import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.moultwright.domain.label.LabelStack;
import org.moultwright.workflow.LabelJob;
import org.moultwright.workflow.PotLabel;

/** Labels to be put on a sheet of the keeper's choice. The sheet begun stays laid in for the next ones. */
public final class LabelsViewModel {
    private final InstantSource clock;
    private final StackChoice stack;
    private final SheetForm form;
    private final PreviewModel preview;
    private final LabelNews news = new LabelNews();
    private final LabelOutput output;
    private List<PotLabel> labels = List.of();

    /** What was put out last, if it went. */
    private Optional<LabelJob> putOut = Optional.empty();

    public LabelsViewModel(LabelDesk desk, InstantSource clock) {
        this.clock = clock;
        this.stack = desk.stack();
        this.form = new SheetForm(stack.last().get());
        this.preview = new PreviewModel(desk.printer(), desk.runner());
        this.output = new LabelOutput(desk, news);
        form.whenChanged(this::lay);
        news.doneProperty().addListener((observed, before, now) -> keep(now));
        preview.faultProperty()
                .addListener((observed, before, now) ->
                        news.failed(now.map(LabelWords::notDrawn).orElse("")));
    }

    public SheetForm form() {
        return form;
    }

    PreviewModel preview() {
        return preview;
    }

    LabelNews news() {
        return news;
    }

    /** Lays these on the sheet, from the first cell that was free after the last ones. */
    public void begin(List<PotLabel> wanted) {
        boolean hasGone = !news.doneProperty().get().isEmpty();
        putOut.filter(job -> hasGone)
                .ifPresent(job -> form.firstCellProperty().set(OptionalInt.of(LabelWords.nextFreeCell(job))));
        putOut = Optional.empty();
        labels = List.copyOf(wanted);
        news.done("");
        lay();
    }

    public void save() {
        putOut = preview.jobProperty().get();
        output.save(putOut.stream().toList());
    }

    public void print() {
        putOut = preview.jobProperty().get();
        output.print(putOut.stream().toList());
    }

    void saveCalibration() {
        form.calibration(clock.instant()).ifPresent(output::saveCalibration);
    }

    void printCalibration() {
        form.calibration(clock.instant()).ifPresent(output::printCalibration);
    }

    /** Remembers the stack with what went being used up. */
    private void keep(String whatWent) {
        if (!whatWent.isEmpty()) {
            form.stack()
                    .map(lying -> putOut.map(
                                    job -> new LabelStack(lying.sheet(), LabelWords.nextFreeCell(job), lying.shift()))
                            .orElse(lying))
                    .ifPresent(stack.keep());
        }
    }

    private void lay() {
        preview.show(labels.isEmpty() ? Optional.empty() : form.job(labels, clock.instant()));
    }
}
