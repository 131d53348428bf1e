package org.moultwright.ui.broods;

import java.nio.file.Path;
import java.util.Locale;
import org.moultwright.language.Numbers;
import org.moultwright.language.Texts;
import org.moultwright.workflow.BroodBook;
import org.moultwright.workflow.BroodFolders.FolderProblem;

/** What is said of a folder being taken in. */
final class TakeInWords {
    static final String REMEDY = Texts.say("Nothing was taken in. Mend these places in the folder, then try again.");

    private TakeInWords() {}

    /** "Reading cc-26-a". */
    static String reading(Path folder) {
        return Texts.say("Reading {0}", name(folder));
    }

    /** "CC-26-A is taken in: 212 rows and 16 500 readings." */
    static String takenIn(String brood, BroodBook.TakenIn takenIn) {
        return takenIn.changedNothing()
                ? Texts.say("Everything of {0} was here already; nothing was changed.", brood)
                : Texts.say(
                        "{0} is taken in: {1} and {2}.",
                        brood,
                        counted(takenIn.rows(), Texts.say("row"), Texts.say("rows")),
                        counted(takenIn.readings(), Texts.say("reading"), Texts.say("readings")));
    }

    /** "3 places in cc-26-a cannot be read." */
    static String refused(Path folder, int problems) {
        return Texts.say(
                "{0} in {1} cannot be read.", counted(problems, Texts.say("place"), Texts.say("places")), name(folder));
    }

    static String failed(Path folder, RuntimeException fault) {
        return Texts.say("{0} was not taken in: {1}", name(folder), fault.getMessage());
    }

    static String cancelled(Path folder) {
        return Texts.say("Stopped. Nothing of {0} was taken in.", name(folder));
    }

    /** "checks.csv, line 12". */
    static String place(FolderProblem problem) {
        return problem.line() > 0 ? Texts.say("{0}, line {1}", problem.file(), problem.line()) : problem.file();
    }

    /** "count: “x3” stands there, expected a whole number". */
    static String problem(FolderProblem problem) {
        String column = problem.column().isEmpty() ? "" : problem.column() + ": ";
        String value = problem.value().isEmpty() ? "" : Texts.say("“{0}” stands there, ", problem.value());
        return Texts.say("{0}{1}expected {2}", column, value, problem.expected());
    }

    /** A notice as a sentence. */
    static String sentence(String notice) {
        return notice.isEmpty() ? "" : notice.substring(0, 1).toUpperCase(Locale.ROOT) + notice.substring(1) + ".";
    }

    private static String counted(long count, String one, String many) {
        return Numbers.grouped(count).replace(',', ' ') + " " + (count == 1 ? one : many);
    }

    private static String name(Path folder) {
        Path last = folder.getFileName();
        return last == null ? folder.toString() : last.toString();
    }
}
