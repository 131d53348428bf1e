package org.moultwright.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.moultwright.workflow.DocumentException;
import org.moultwright.workflow.DocumentException.Reason;

class WholeFileTest {
    private static final byte[] BYTES = {1, 2, 3};

    @TempDir
    private Path folder;

    @Test
    void takesThePlaceOfAnOlderFile() throws IOException {
        Path target = folder.resolve("labels.pdf");
        Files.writeString(target, "older");
        WholeFile.write(target, BYTES);
        assertThat(target).hasBinaryContent(BYTES);
        assertThat(folder).isDirectoryContaining(target::equals);
        try (var files = Files.list(folder)) {
            assertThat(files).containsExactly(target);
        }
    }

    @Test
    void refusesAMissingFolder() {
        assertThatExceptionOfType(DocumentException.class)
                .isThrownBy(() -> WholeFile.write(folder.resolve("gone").resolve("labels.pdf"), BYTES))
                .extracting(DocumentException::reason)
                .isEqualTo(Reason.FOLDER_MISSING);
    }

    @Test
    void refusesToReplaceWhatIsNotAFile() throws IOException {
        Path target = Files.createDirectory(folder.resolve("labels.pdf"));
        Files.writeString(target.resolve("kept.txt"), "kept");
        assertThatExceptionOfType(DocumentException.class)
                .isThrownBy(() -> WholeFile.write(target, BYTES))
                .extracting(DocumentException::reason)
                .isEqualTo(Reason.NOT_A_FILE);
        assertThat(target.resolve("kept.txt")).hasContent("kept");
    }

    @Test
    void leavesNothingBehindWhereItCannotWrite() throws IOException {
        // A name longer than file systems allow fails for every user, an administrator too.
        Path target = folder.resolve("x".repeat(300) + ".pdf");
        assertThatExceptionOfType(DocumentException.class)
                .isThrownBy(() -> WholeFile.write(target, BYTES))
                .withMessageStartingWith("Not saved: ")
                .extracting(DocumentException::reason)
                .isEqualTo(Reason.WRITE_FAILED);
        assertThat(folder).isEmptyDirectory();
    }
}
