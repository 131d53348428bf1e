package org.moultwright.boot.machine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.GraphicsEnvironment;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.util.WaitForAsyncUtils;

class DesktopNoticeTest {
    @TempDir
    Path folder;

    @Test
    void theProgramOfTheMachineIsGivenTheWordsAndNothingInThemIsAnOption() throws IOException, TimeoutException {
        assumeTrue(folder.getFileSystem().supportedFileAttributeViews().contains("posix"));
        Path told = folder.resolve("told.txt");
        Path program = folder.resolve("notify-send");
        Files.writeString(
                program,
                "#!/bin/sh\nprintf '%s\\n' \"$@\" > '" + told + ".new'\nmv '" + told + ".new' '" + told + "'\n");
        Files.setPosixFilePermissions(program, PosixFilePermissions.fromString("rwx------"));
        assertThat(new DesktopNotice(Optional.of(program)).show("Moultwright: alarm", "--box 1 too warm"))
                .isTrue();
        WaitForAsyncUtils.waitFor(10, TimeUnit.SECONDS, () -> Files.exists(told));
        assertThat(Files.readAllLines(told))
                .isEqualTo(List.of(
                        "--urgency=critical",
                        "--app-name=Moultwright",
                        "--",
                        "Moultwright: alarm",
                        "--box 1 too warm"));
    }

    @Test
    void aProgramThatIsGoneShowsNothing() {
        assertThat(new DesktopNotice(Optional.of(folder.resolve("nothing"))).show("a", "b"))
                .isFalse();
    }

    @Test
    void aMachineWithoutEitherSaysSo() {
        assumeTrue(GraphicsEnvironment.isHeadless());
        assertThat(new DesktopNotice(Optional.empty()).show("a", "b")).isFalse();
    }
}
