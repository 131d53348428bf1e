package org.moultwright.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.moultwright.store.ChildJvm;

/**
 * In a window of 1280 by 720 no text is left unsaid and none is cut: plainly, in a wordy language, and in the largest
 * text. No page is moved sideways. A text that is shortened counts as whole only where a tooltip says all of it; one
 * that reaches out of what is seen only where that can be scrolled to it.
 */
class PseudoWalkTest {
    private static final int LONGEST_MINUTES = 8;
    private static final int VIEWS_AT_LEAST = 50;

    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(strings = {PseudoWalk.PLAIN, PseudoWalk.WORDY, PseudoWalk.LARGE})
    void everyTextIsSaidAndHasRoom(String walk) throws Exception {
        assertThat(found(walk)).isEmpty();
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
