package org.moultwright.exchange;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import org.moultwright.workflow.BroodFolders.FolderProblem;

/** Gathers what is wrong in a folder, and what was passed over or assumed. Not safe to share. */
final class Problems {
    /** A file in the wrong form has a problem in every line; the rest beyond these is counted. */
    private static final int MOST = 1_000;

    private static final int LONGEST_VALUE = 80;

    private final List<FolderProblem> problems = new ArrayList<>();
    private final TreeSet<String> notices = new TreeSet<>();
    private long unlisted;

    void add(String file, long line, String column, String value, String expected) {
        if (problems.size() < MOST) {
            problems.add(new FolderProblem(file, line, column, shortened(value), expected));
        } else {
            unlisted++;
        }
    }

    void notice(String sentence) {
        notices.add(sentence);
    }

    boolean isEmpty() {
        return problems.isEmpty();
    }

    /** Problems in order of file and line, at most a thousand, and then the number of the others. */
    List<FolderProblem> list() {
        List<FolderProblem> sorted = new ArrayList<>(problems);
        sorted.sort(Comparator.comparing(FolderProblem::file).thenComparingLong(FolderProblem::line));
        if (unlisted > 0) {
            sorted.add(new FolderProblem("", 0, "", "", unlisted + " more problems are not listed"));
        }
        return List.copyOf(sorted);
    }

    List<String> notices() {
        return List.copyOf(notices);
    }

    private static String shortened(String value) {
        return value.length() <= LONGEST_VALUE ? value : value.substring(0, LONGEST_VALUE - 3) + "...";
    }
}
