package org.moultwright.ui.label;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.moultwright.domain.code.CodeSpan;
import org.moultwright.domain.label.PageSize;
import org.moultwright.language.Texts;
import org.moultwright.workflow.DocumentException;
import org.moultwright.workflow.LabelJob;
import org.moultwright.workflow.PotLabel;

/** The sentences about labels. */
public final class LabelWords {
    public static final String NOT_PRINTED = Texts.say(
            "The printer did not take the sheets. See to the printer and to what came out, then print again, or save "
                    + "the labels as PDF.");

    private static final String CALIBRATION_HOW =
            Texts.say("Print it on plain paper at full size and hold it against a sheet of labels.");
    public static final String CALIBRATION_PRINTED =
            Texts.say("Calibration page sent to the printer. Hold it against a sheet of labels.");

    private static final int SPANS_TOLD = 3;

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
    public static String printed(List<LabelJob> jobs) {
        int sheets = jobs.stream().mapToInt(LabelJob::sheets).sum();
        return Texts.say(
                "{0} sent to the printer. Check that a label came out at its full size.",
                Texts.count(sheets, "1 sheet", "{0} sheets", sheets));
    }

    static String noSuchPaper(String printer, PageSize page) {
        return Texts.say(
                "Nothing was printed: the printer {0} has no paper of {1}. Set such paper up in the system's "
                        + "settings, or save the labels as PDF.",
                printer, page.title());
    }

    static String otherPaper(String printer, PageSize page) {
        return Texts.say(
                "Nothing was printed: the printer {0} is set to another paper. Set it to {1} in the "
                        + "system's settings, or save the labels as PDF.",
                printer, page.title());
    }

    public static String calibrationSaved(Path pdf) {
        return Texts.say("Calibration page saved: {0}. {1}", pdf.getFileName(), CALIBRATION_HOW);
    }

    /** "26A-001-D to 26A-033-N". */
    public static String codes(LabelJob job) {
        return codes(job.labels());
    }

    /** The same for any labels: "26A-001-D to 26A-033-N, 26B-001-4", the first few runs of them. */
    public static String codes(List<PotLabel> labels) {
        List<CodeSpan> spans = CodeSpan.of(labels.stream().map(PotLabel::code).toList());
        String told = spans.stream()
                .limit(SPANS_TOLD)
                .map(span -> span.isOne() ? span.first() : Texts.say("{0} to {1}", span.first(), span.last()))
                .collect(Collectors.joining(", "));
        int others = spans.stream().skip(SPANS_TOLD).mapToInt(CodeSpan::codes).sum();
        return others == 0 ? told : Texts.say("{0} and {1} more", told, others);
    }

    /** "Sheet 1 of 2". */
    public static String sheetTitle(Optional<LabelJob> job, int page) {
        return job.map(made -> Texts.say("Sheet {0} of {1}", page + 1, made.sheets()))
                .orElse(Texts.say("No labels yet"));
    }

    /** "labels-26A-001-D-to-26A-033-N.pdf". */
    public static String fileName(LabelJob job) {
        List<PotLabel> labels = job.labels();
        String first = labels.get(0).code();
        String last = labels.get(labels.size() - 1).code();
        return "labels-" + (first.equals(last) ? first : first + "-to-" + last) + ".pdf";
    }

    public static String labelsSaved(List<Path> pdfs) {
        return Texts.say(
                "Labels saved: {0}. Print at full size, without fitting to the page.",
                pdfs.stream().map(pdf -> String.valueOf(pdf.getFileName())).collect(Collectors.joining(", ")));
    }

    public static String sameFile(Path pdf) {
        return Texts.say(
                "Not saved: {0} was chosen for two kinds of sheets. Save again and give each its own name.",
                pdf.getFileName());
    }

    public static String notDrawn(RuntimeException fault) {
        return fault(fault, Texts.say("The labels cannot be drawn"));
    }

    public static String fault(RuntimeException fault, String what) {
        return fault instanceof DocumentException ? message(fault) : what + ": " + message(fault);
    }

    private static String message(RuntimeException fault) {
        String message = fault.getMessage();
        return message == null ? fault.getClass().getSimpleName() : message;
    }
}
