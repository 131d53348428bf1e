package org.moultwright.boot.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import org.moultwright.domain.BroodRecord;
import org.moultwright.exchange.PlainBroodFolders;
import org.moultwright.workflow.BroodFolders.FolderContent;
import org.moultwright.workflow.BroodFolders.FolderProblem;

/** Reads brood folders for commands that need no store. */
final class Folders {
    private Folders() {}

    /**
     * A folder's brood with all its readings.
     *
     * @param err is told what was passed over or assumed, and questions left open
     * @throws Refusal listing every problem, if there is any
     */
    static BroodRecord whole(Path folder, PrintWriter err) {
        FolderContent content = new PlainBroodFolders().read(folder);
        tellNotices(err, folder, content.notices());
        BroodRecord record = content.record().orElseThrow(() -> new Refusal(listed(folder, content.problems())));
        return record.withReadings(content.readings().gathered());
    }

    /** All problems of a folder, a line each. */
    static String listed(Path folder, List<FolderProblem> problems) {
        StringBuilder lines =
                new StringBuilder().append("'%s' was not read: %d problems".formatted(folder, problems.size()));
        problems.forEach(
                problem -> lines.append(System.lineSeparator()).append("  ").append(line(problem)));
        return lines.toString();
    }

    static void tellNotices(PrintWriter err, Path folder, List<String> notices) {
        notices.forEach(notice -> err.println(folder + ": " + notice));
        err.flush();
    }

    private static String line(FolderProblem problem) {
        StringBuilder line = new StringBuilder(problem.file());
        if (problem.line() > 0) {
            line.append(", line ").append(problem.line());
        }
        if (!problem.column().isEmpty()) {
            line.append(", ").append(problem.column());
        }
        if (!problem.value().isEmpty()) {
            line.append(", '").append(problem.value()).append('\'');
        }
        return line.append(": expected ").append(problem.expected()).toString();
    }
}
