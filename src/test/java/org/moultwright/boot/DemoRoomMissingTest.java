package org.moultwright.boot;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.UncheckedIOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is said where the demo broods did not come along. */
class DemoRoomMissingTest {
    private static final String HOME = "moultwright.home";

    @Test
    void thePlaceIsToldPlainly(@TempDir Path folder) {
        String before = System.getProperty(HOME);
        System.setProperty(HOME, folder + "/bin/..");
        try {
            assertThatThrownBy(() -> DemoRoom.open(folder.resolve("demo.store"), DemoRoom.USUAL_EVENING))
                    .isInstanceOf(UncheckedIOException.class)
                    .hasMessage("The demo broods are not at '%s'.", folder.resolve("demo-data"));
        } finally {
            if (before == null) {
                System.clearProperty(HOME);
            } else {
                System.setProperty(HOME, before);
            }
        }
    }
}
