package org.moultwright.ui.register;

import java.util.List;
import java.util.Optional;
import org.moultwright.language.Texts;
import org.moultwright.text.DayWords;
import org.moultwright.ui.label.LabelNews;
import org.moultwright.ui.label.LabelOutput;
import org.moultwright.ui.label.LabelWords;
import org.moultwright.ui.label.PreviewModel;
import org.moultwright.ui.label.SheetForm;
import org.moultwright.workflow.PotLabel;

/** Labels of pots that are in the register, printed again. */
final class LabelsViewModel {
    private final RegisterDesk desk;
    private final SheetForm form = new SheetForm();
    private final PreviewModel preview;
    private final LabelNews news = new LabelNews();
    private final LabelOutput output;
    private List<PotLabel> labels = List.of();

    LabelsViewModel(RegisterDesk desk) {
        this.desk = desk;
        this.preview = new PreviewModel(desk.labels().printer(), desk.labels().runner());
        this.output = new LabelOutput(desk.labels(), news);
        form.whenChanged(this::lay);
        preview.faultProperty()
                .addListener((observed, before, now) ->
                        news.failed(now.map(fault -> LabelWords.fault(fault, Texts.say("The labels cannot be drawn")))
                                .orElse("")));
    }

    SheetForm form() {
        return form;
    }

    PreviewModel preview() {
        return preview;
    }

    LabelNews news() {
        return news;
    }

    void begin(List<PotRow> rows) {
        labels = rows.stream().map(row -> label(row, desk.days())).toList();
        news.done("");
        lay();
    }

    void save() {
        preview.jobProperty().get().ifPresent(output::save);
    }

    void print() {
        preview.jobProperty().get().ifPresent(output::print);
    }

    void saveCalibration() {
        form.calibration(desk.clock().instant()).ifPresent(output::saveCalibration);
    }

    void printCalibration() {
        form.calibration(desk.clock().instant()).ifPresent(output::printCalibration);
    }

    /** What stood on it the first time; where nobody wrote that down, the day it was filled. */
    private static PotLabel label(PotRow row, DayWords days) {
        String line = row.life().pot().label();
        return new PotLabel(
                row.code(),
                row.brood().taxon(),
                line.isEmpty() ? Texts.say("potted {0}", days.shortDay(row.potted())) : line);
    }

    private void lay() {
        preview.show(
                labels.isEmpty()
                        ? Optional.empty()
                        : form.job(labels, desk.clock().instant()));
    }
}
