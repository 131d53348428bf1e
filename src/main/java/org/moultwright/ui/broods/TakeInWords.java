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
                        Texts.count(takenIn.rows(), "{0} row", "{0} rows", grouped(takenIn.rows())),
                        Texts.count(takenIn.readings(), "{0} reading", "{0} readings", grouped(takenIn.readings())));
    }

    /** "3 places in cc-26-a cannot be read." */
    static String refused(Path folder, int problems) {
        return Texts.count(
                problems,
                "{0} place in {1} cannot be read.",
                "{0} places in {1} cannot be read.",
                grouped(problems),
                name(folder));
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
        String words = problem.value().isEmpty()
                ? Texts.say("expected {0}", problem.expected())
                : Texts.say("“{0}” stands there, expected {1}", problem.value(), problem.expected());
        return problem.column().isEmpty() ? words : problem.column() + ": " + words;
    }

    /** A notice as a sentence. */
    static String sentence(String notice) {
        return notice.isEmpty() ? "" : notice.substring(0, 1).toUpperCase(Locale.ROOT) + notice.substring(1) + ".";
    }

    private static String grouped(long count) {
        return Numbers.grouped(count).replace(',', ' ');
    }

    private static String name(Path folder) {
        Path last = folder.getFileName();
        return last == null ? folder.toString() : last.toString();
    }
}
