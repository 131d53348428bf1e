package org.moultwright.ui.label;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.moultwright.domain.label.PageSize;
import org.moultwright.domain.label.Paper;
import org.moultwright.language.Texts;
import org.moultwright.workflow.DocumentException;
import org.moultwright.workflow.LabelJob;
import org.moultwright.workflow.PotLabel;

/** The sentences about labels. */
public final class LabelWords {
    public static final String NO_PRINTER =
            Texts.say("No printer is set up on this machine. Set one up, or save the labels as PDF and print "
                    + "them elsewhere.");

    private static final String CALIBRATION_HOW =
            Texts.say("Print it on plain paper at full size and hold it against a sheet of labels.");
    public static final String CALIBRATION_PRINTED =
            Texts.say("Calibration page sent to the printer. Hold it against a sheet of labels.");

    private LabelWords() {}

    /** The sheet that was begun goes on where it was left. */
    public static int nextFreeCell(LabelJob job) {
        return (job.firstCell() - 1 + job.labels().size()) % job.sheet().cells() + 1;
    }

    /** "7 labels". */
    public static String count(LabelJob job) {
        int count = job.labels().size();
        return Texts.count(count, "1 label", "{0} labels", count);
    }

    /** "2 sheets sent to the printer. Check that they came out at full size." */
    public static String printed(LabelJob job) {
        return Texts.say(
                "{0} sent to the printer. Check that a label came out at its full size.",
                Texts.count(job.sheets(), "1 sheet", "{0} sheets", job.sheets()));
    }

    public static String notPrinted(int sheet, PageSize page) {
        boolean isPaper =
                Stream.of(Paper.values()).anyMatch(paper -> paper.page().equals(page));
        return Texts.say(
                "Sheet {0} was not printed: the printer did not take it. See to the printer, then print again.{1}",
                sheet,
                isPaper
                        ? ""
                        : Texts.say(" It must know a paper of {0}: set that up in the system first.", page.title()));
    }

    public static String calibrationSaved(Path pdf) {
        return Texts.say("Calibration page saved: {0}. {1}", pdf.getFileName(), CALIBRATION_HOW);
    }

    /** "26A-001-D to 26A-033-N". */
    public static String codes(LabelJob job) {
        List<PotLabel> labels = job.labels();
        String first = labels.get(0).code();
        return labels.size() == 1
                ? first
                : Texts.say("{0} to {1}", first, labels.get(labels.size() - 1).code());
    }

    /** "Sheet 1 of 2". */
    public static String sheetTitle(Optional<LabelJob> job, int page) {
        return job.map(made -> Texts.say("Sheet {0} of {1}", page + 1, made.sheets()))
                .orElse(Texts.say("No labels yet"));
    }

    /** "labels-26A-001-D-to-26A-033-N.pdf". */
    public static String fileName(LabelJob job) {
        return "labels-" + codes(job).replace(' ', '-') + ".pdf";
    }

    public static String labelsSaved(Path pdf) {
        return Texts.say("Labels saved: {0}. Print at full size, without fitting to the page.", pdf.getFileName());
    }

    public static String fault(RuntimeException fault, String what) {
        return fault instanceof DocumentException ? message(fault) : what + ": " + message(fault);
    }

    private static String message(RuntimeException fault) {
        String message = fault.getMessage();
        return message == null ? fault.getClass().getSimpleName() : message;
    }
}
