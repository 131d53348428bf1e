package org.moultwright.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.moultwright.file.SmallDisk;
import org.moultwright.workflow.DocumentException;
import org.moultwright.workflow.DocumentException.Reason;

class DocumentFileTest {
    private static final byte[] BYTES = {1, 2, 3};

    @TempDir
    private Path folder;

    @Test
    void takesThePlaceOfAnOlderFile() throws IOException {
        Path target = folder.resolve("labels.pdf");
        Files.writeString(target, "older");
        DocumentFile.write(target, BYTES);
        assertThat(target).hasBinaryContent(BYTES);
        assertThat(folder).isDirectoryContaining(target::equals);
        try (var files = Files.list(folder)) {
            assertThat(files).containsExactly(target);
        }
    }

    @Test
    void refusesAMissingFolder() {
        assertThatExceptionOfType(DocumentException.class)
                .isThrownBy(() -> DocumentFile.write(folder.resolve("gone").resolve("labels.pdf"), BYTES))
                .extracting(DocumentException::reason)
                .isEqualTo(Reason.FOLDER_MISSING);
    }

    @Test
    void refusesToReplaceWhatIsNotAFile() throws IOException {
        Path target = Files.createDirectory(folder.resolve("labels.pdf"));
        Files.writeString(target.resolve("kept.txt"), "kept");
        assertThatExceptionOfType(DocumentException.class)
                .isThrownBy(() -> DocumentFile.write(target, BYTES))
                .extracting(DocumentException::reason)
                .isEqualTo(Reason.NOT_A_FILE);
        assertThat(target.resolve("kept.txt")).hasContent("kept");
    }

    @Test
    void saysWhichFolderIsMissingWhereALinkLeads() throws IOException {
        Path link = Files.createSymbolicLink(folder.resolve("labels.pdf"), Path.of("unplugged", "labels.pdf"));
        assertThatExceptionOfType(DocumentException.class)
                .isThrownBy(() -> DocumentFile.write(link, BYTES))
                .withMessageStartingWith("Not saved: there is no folder " + folder.resolve("unplugged") + ".")
                .extracting(DocumentException::reason)
                .isEqualTo(Reason.FOLDER_MISSING);
    }

    @Test
    void refusesALinkThatLeadsNowhere() throws IOException {
        Path link = Files.createSymbolicLink(folder.resolve("labels.pdf"), Path.of("labels.pdf"));
        assertThatExceptionOfType(DocumentException.class)
                .isThrownBy(() -> DocumentFile.write(link, BYTES))
                .extracting(DocumentException::reason)
                .isEqualTo(Reason.NOT_A_FILE);
    }

    @Test
    void saysThatTheDiskIsFullAndLeavesTheOlder() {
        Optional<SmallDisk> made = SmallDisk.at(folder, 1);
        assumeThat(made).as("this machine lets a program make a small disk").isPresent();
        try (SmallDisk disk = made.orElseThrow()) {
            Path target = disk.file("labels.pdf");
            DocumentFile.write(target, BYTES);
            disk.fillToTheBrim();
            assertThatExceptionOfType(DocumentException.class)
                    .isThrownBy(() -> DocumentFile.write(target, new byte[] {4}))
                    .extracting(DocumentException::reason)
                    .isEqualTo(Reason.DISK_FULL);
            assertThat(target).hasBinaryContent(BYTES);
        }
    }

    @Test
    void leavesNothingBehindWhereItCannotWrite() throws IOException {
        // A name without room for what is added to it meanwhile fails for every user, an administrator too.
        Path target = folder.resolve("x".repeat(240) + ".pdf");
        assertThatExceptionOfType(DocumentException.class)
                .isThrownBy(() -> DocumentFile.write(target, BYTES))
                .withMessageStartingWith("Not saved: ")
                .satisfies(fault -> assertThat(fault.getMessage()).doesNotContain(".unfinished"))
                .extracting(DocumentException::reason)
                .isEqualTo(Reason.WRITE_FAILED);
        assertThat(folder).isEmptyDirectory();
    }
}
