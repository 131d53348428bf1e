package org.moultwright.ui.broods;

import java.nio.file.Path;
import java.util.Locale;
import org.moultwright.workflow.BroodBook;
import org.moultwright.workflow.BroodFolders.FolderProblem;

/** What is said of a folder being taken in. */
final class TakeInWords {
    static final String REMEDY = "Nothing was taken in. Mend these places in the folder, then try again.";

    private TakeInWords() {}

    /** "Reading cc-26-a". */
    static String reading(Path folder) {
        return "Reading " + name(folder);
    }

    /** "CC-26-A is taken in: 212 rows and 16 500 readings." */
    static String takenIn(String brood, BroodBook.TakenIn takenIn) {
        return takenIn.changedNothing()
                ? "Everything of " + brood + " was here already; nothing was changed."
                : "%s is taken in: %s and %s."
                        .formatted(
                                brood,
                                counted(takenIn.rows(), "row", "rows"),
                                counted(takenIn.readings(), "reading", "readings"));
    }

    /** "3 places in cc-26-a cannot be read." */
    static String refused(Path folder, int problems) {
        return "%s in %s cannot be read.".formatted(counted(problems, "place", "places"), name(folder));
    }

    static String failed(Path folder, RuntimeException fault) {
        return "%s was not taken in: %s".formatted(name(folder), fault.getMessage());
    }

    static String cancelled(Path folder) {
        return "Stopped. Nothing of " + name(folder) + " was taken in.";
    }

    /** "checks.csv, line 12". */
    static String place(FolderProblem problem) {
        return problem.line() > 0 ? problem.file() + ", line " + problem.line() : problem.file();
    }

    /** "count: “x3” stands there, expected a whole number". */
    static String problem(FolderProblem problem) {
        String column = problem.column().isEmpty() ? "" : problem.column() + ": ";
        String value = problem.value().isEmpty() ? "" : "“" + problem.value() + "” stands there, ";
        return column + value + "expected " + problem.expected();
    }

    /** A notice as a sentence. */
    static String sentence(String notice) {
        return notice.isEmpty() ? "" : notice.substring(0, 1).toUpperCase(Locale.ROOT) + notice.substring(1) + ".";
    }

    private static String counted(long count, String one, String many) {
        return String.format(Locale.ROOT, "%,d", count).replace(',', ' ') + " " + (count == 1 ? one : many);
    }

    private static String name(Path folder) {
        Path last = folder.getFileName();
        return last == null ? folder.toString() : last.toString();
    }
}
