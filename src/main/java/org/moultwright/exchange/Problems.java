package org.moultwright.exchange;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.moultwright.workflow.BroodFolders.FolderProblem;

/** Gathers what is wrong in a folder, and what was passed over. Not safe to share. */
final class Problems {
    /** A file in the wrong form has a problem in every line; a keeper needs the first and their number. */
    private static final int MOST_PER_FILE = 100;

    private final List<FolderProblem> problems = new ArrayList<>();
    private final TreeSet<String> notices = new TreeSet<>();
    private String currentFile = "";
    private int inCurrentFile;

    void add(String file, long line, String column, String value, String expected) {
        if (!file.equals(currentFile)) {
            currentFile = file;
            inCurrentFile = 0;
        }
        inCurrentFile++;
        if (inCurrentFile <= MOST_PER_FILE) {
            problems.add(new FolderProblem(file, line, column, shortened(value), expected));
        } else if (inCurrentFile == MOST_PER_FILE + 1) {
            problems.add(new FolderProblem(
                    file, line, "", "", "no more than " + MOST_PER_FILE + " problems are listed a file"));
        }
    }

    void notice(String sentence) {
        notices.add(sentence);
    }

    boolean isEmpty() {
        return problems.isEmpty();
    }

    List<FolderProblem> list() {
        return List.copyOf(problems);
    }

    List<String> notices() {
        return List.copyOf(notices);
    }

    private static String shortened(String value) {
        return value.length() <= 80 ? value : value.substring(0, 77) + "...";
    }
}
