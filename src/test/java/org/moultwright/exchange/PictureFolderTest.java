package org.moultwright.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Which pictures of a folder are new, and when they are whole. */
class PictureFolderTest {
    private static final Instant NOW = Instant.parse("2026-06-01T19:00:00Z");

    @TempDir
    private Path folder;

    @Test
    void aNewPictureIsToldOfOnceItStaysAsItIs() throws IOException {
        PictureFolder pictures = new PictureFolder(folder::toString, () -> NOW);
        Path second = picture("b.JPG", Duration.ofMinutes(1));
        Path first = picture("a.png", Duration.ofHours(2));
        picture("old.jpg", Duration.ofDays(2));
        picture("notes.txt", Duration.ofMinutes(1));
        assertThat(pictures.recent()).as("it may still be written").isEmpty();
        assertThat(pictures.recent()).containsExactly(first, second);
        Files.writeString(first, "more of it");
        Files.setLastModifiedTime(first, FileTime.from(NOW));
        assertThat(pictures.recent()).containsExactly(second);
        assertThat(pictures.recent()).containsExactly(second, first);
    }

    @Test
    void aFolderThatIsNotThereHoldsNone() {
        assertThat(new PictureFolder(() -> "", () -> NOW).recent()).isEmpty();
        assertThat(new PictureFolder(() -> folder + "/gone", () -> NOW).recent())
                .isEmpty();
    }

    private Path picture(String name, Duration ago) throws IOException {
        Path file = Files.writeString(folder.resolve(name), name);
        Files.setLastModifiedTime(file, FileTime.from(NOW.minus(ago)));
        return file;
    }
}
