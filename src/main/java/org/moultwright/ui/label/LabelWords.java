package org.moultwright.ui.label;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.moultwright.domain.label.PageSize;
import org.moultwright.domain.label.Paper;
import org.moultwright.workflow.DocumentException;
import org.moultwright.workflow.LabelJob;
import org.moultwright.workflow.PotLabel;

/** The sentences about labels. */
public final class LabelWords {
    public static final String NO_PRINTER =
            "No printer is set up on this machine. Set one up, or save the labels as PDF and print them elsewhere.";

    private static final String CALIBRATION_HOW =
            "Print it on plain paper at full size and hold it against a sheet of labels.";
    public static final String CALIBRATION_PRINTED =
            "Calibration page sent to the printer. Hold it against a sheet of labels.";

    private LabelWords() {}

    /** The sheet that was begun goes on where it was left. */
    public static int nextFreeCell(LabelJob job) {
        return (job.firstCell() - 1 + job.labels().size()) % job.sheet().cells() + 1;
    }

    /** "7 labels". */
    public static String count(LabelJob job) {
        int count = job.labels().size();
        return count == 1 ? "1 label" : count + " labels";
    }

    /** "2 sheets sent to the printer. Check that they came out at full size." */
    public static String printed(LabelJob job) {
        return (job.sheets() == 1 ? "1 sheet" : job.sheets() + " sheets")
                + " sent to the printer. Check that a label came out at its full size.";
    }

    public static String notPrinted(int sheet, PageSize page) {
        boolean isPaper =
                Stream.of(Paper.values()).anyMatch(paper -> paper.page().equals(page));
        return "Sheet %d was not printed: the printer did not take it. See to the printer, then print again."
                        .formatted(sheet)
                + (isPaper
                        ? ""
                        : " It must know a paper of %s: set that up in the system first.".formatted(page.title()));
    }

    public static String calibrationSaved(Path pdf) {
        return "Calibration page saved: " + pdf.getFileName() + ". " + CALIBRATION_HOW;
    }

    /** "26A-001-D to 26A-033-N". */
    public static String codes(LabelJob job) {
        List<PotLabel> labels = job.labels();
        String first = labels.get(0).code();
        return labels.size() == 1
                ? first
                : first + " to " + labels.get(labels.size() - 1).code();
    }

    /** "Sheet 1 of 2". */
    public static String sheetTitle(Optional<LabelJob> job, int page) {
        return job.map(made -> "Sheet %d of %d".formatted(page + 1, made.sheets()))
                .orElse("No labels yet");
    }

    /** "labels-26A-001-D-to-26A-033-N.pdf". */
    public static String fileName(LabelJob job) {
        return "labels-" + codes(job).replace(' ', '-') + ".pdf";
    }

    public static String labelsSaved(Path pdf) {
        return "Labels saved: " + pdf.getFileName() + ". Print at full size, without fitting to the page.";
    }

    public static String fault(RuntimeException fault, String what) {
        return fault instanceof DocumentException ? message(fault) : what + ": " + message(fault);
    }

    private static String message(RuntimeException fault) {
        String message = fault.getMessage();
        return message == null ? fault.getClass().getSimpleName() : message;
    }
}
