package org.moultwright.boot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.abort;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.moultwright.store.H2Store;

/**
 * A tray is carried by the mouse on a true display: the system's own drag and drop, which no test without a display has.
 * Where there is no Xvfb it is not tried, and says so.
 */
class CarriedByHandTest {
    private static final long SECONDS_TO_WAIT = 180;

    /** To be looked at: the tray on its way. */
    private static final Path PICTURE = Path.of("target", "screenshots", "carried.png");

    @TempDir
    private Path folder;

    @Test
    void aTrayIsCarriedIntoAnotherBox() throws IOException, InterruptedException {
        Process display = display();
        try {
            String number = new BufferedReader(new InputStreamReader(display.getInputStream(), StandardCharsets.UTF_8))
                    .readLine();
            Files.createDirectories(PICTURE.getParent());
            Process desk = desk(":" + number);
            String said = new String(desk.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            assertThat(desk.waitFor(SECONDS_TO_WAIT, TimeUnit.SECONDS)).isTrue();
            assertThat(said.lines()).as(said).contains(CarryingProgram.CARRIED);
        } finally {
            display.destroy();
        }
        try (H2Store store = H2Store.open(folder.resolve(DeskRoom.DEMO.key() + ".store"))) {
            assertThat(store.book().latestDeeds(1).get(0).words()).isEqualTo("A1 moved into box 2");
            assertThat(store.check().problems()).isEmpty();
        }
        assertThat(PICTURE).isNotEmptyFile();
    }

    /** It chooses a number that is free and says it. */
    private static Process display() {
        try {
            return new ProcessBuilder("Xvfb", "-displayfd", "1", "-screen", "0", "1280x800x24", "-nolisten", "tcp")
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
        } catch (IOException notThere) {
            return abort("no Xvfb on this machine, so nothing was carried by hand: " + notThere.getMessage());
        }
    }

    private Process desk(String display) throws IOException {
        ProcessBuilder builder = new ProcessBuilder(List.of(
                ProcessHandle.current().info().command().orElse("java"),
                "-Dprism.order=sw",
                "-cp",
                System.getProperty("java.class.path"),
                CarryingProgram.class.getName(),
                folder.toString(),
                PICTURE.toAbsolutePath().toString()));
        builder.environment().put("DISPLAY", display);
        builder.environment().put("GDK_BACKEND", "x11");
        return builder.redirectErrorStream(true).start();
    }
}
