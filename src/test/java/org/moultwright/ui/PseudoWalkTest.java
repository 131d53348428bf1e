package org.moultwright.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.moultwright.store.ChildJvm;

/** In a window of 1280 by 720 no text is left unsaid; a wordy language and the largest text cut no more than is known. */
class PseudoWalkTest {
    private static final int LONGEST_MINUTES = 5;
    private static final int VIEWS_AT_LEAST = 50;

    /** Texts, over all views, that are known to be cut. These numbers may only go down. */
    private static final int CUT_IN_A_WORDY_LANGUAGE = 125;

    private static final int CUT_IN_THE_LARGEST_TEXT = 465;

    @TempDir
    private Path folder;

    @Test
    void everyTextIsSaidAndMostHaveRoomInAWordyLanguage() throws Exception {
        List<String> found = found(PseudoWalk.WORDY);
        assertThat(found).noneMatch(line -> line.startsWith("UNSAID"));
        assertThat(found).hasSizeLessThanOrEqualTo(CUT_IN_A_WORDY_LANGUAGE);
    }

    @Test
    void mostOfTheLargestTextHasRoom() throws Exception {
        assertThat(found(PseudoWalk.LARGE)).hasSizeLessThanOrEqualTo(CUT_IN_THE_LARGEST_TEXT);
    }

    private List<String> found(String walk) throws IOException, InterruptedException {
        Path report = Path.of("target", "walk-" + walk + ".tsv").toAbsolutePath();
        Process child = ChildJvm.start(PseudoWalk.class, walk, folder.toString(), report.toString());
        child.getOutputStream().close();
        boolean hasEnded = child.waitFor(LONGEST_MINUTES, TimeUnit.MINUTES);
        child.destroyForcibly();
        assertThat(hasEnded).as("the walk has ended").isTrue();
        assertThat(child.exitValue()).isZero();
        List<String> lines = Files.readAllLines(report);
        assertThat(Integer.parseInt(lines.get(0).substring("VIEWS\t".length()))).isGreaterThanOrEqualTo(VIEWS_AT_LEAST);
        return lines.subList(1, lines.size());
    }
}
