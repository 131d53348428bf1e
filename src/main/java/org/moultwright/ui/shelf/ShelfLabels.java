package org.moultwright.ui.shelf;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.moultwright.domain.label.LabelSheets;
import org.moultwright.domain.label.PrintShift;
import org.moultwright.language.Texts;
import org.moultwright.task.Outcome;
import org.moultwright.ui.shell.DeedLine;
import org.moultwright.workflow.LabelJob;
import org.moultwright.workflow.PotLabel;
import org.moultwright.workflow.Standing;

/** Labels for a container and all that stands in it, on the usual sheet. */
final class ShelfLabels {
    private final ShelfDesk desk;
    private final DeedLine news;

    ShelfLabels(ShelfDesk desk, DeedLine news) {
        this.desk = desk;
        this.news = news;
    }

    void save(Standing standing) {
        List<PotLabel> labels = new ArrayList<>();
        collect(standing, labels);
        LabelJob job = new LabelJob(
                LabelSheets.A4_3X8, 1, PrintShift.NONE, labels, desk.clock().instant());
        Optional<Path> chosen =
                desk.choosePdf().apply("labels-" + standing.code().replaceAll("\\W+", "-") + ".pdf");
        chosen.ifPresent(pdf -> desk.runner()
                .<Path>run(
                        progress -> {
                            desk.printer().save(job, pdf);
                            return pdf;
                        },
                        outcome -> {
                            if (outcome instanceof Outcome.Done<Path> done) {
                                news.say(Texts.say(
                                        "{0} saved: {1}. Print at full size, without fitting to the page.",
                                        Texts.count(labels.size(), "1 label", "{0} labels", labels.size()),
                                        done.value().getFileName()));
                            } else if (outcome instanceof Outcome.Failed<Path> failed) {
                                news.refuse(String.valueOf(failed.fault().getMessage()));
                            }
                        }));
    }

    private static void collect(Standing standing, List<PotLabel> labels) {
        String kind = standing.kind().word();
        labels.add(
                standing.occupants().isEmpty()
                        ? new PotLabel(
                                standing.code(),
                                kind,
                                standing.inside()
                                        .map(around -> Texts.say("in {0}", around))
                                        .orElse(""))
                        : new PotLabel(
                                standing.code(),
                                standing.occupants().get(0).taxon(),
                                kind + ", " + ShelfWords.broods(standing)));
        standing.contents().forEach(inside -> collect(inside, labels));
    }
}
