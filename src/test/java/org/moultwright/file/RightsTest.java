package org.moultwright.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.GroupPrincipal;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFileAttributes;
import java.nio.file.attribute.PosixFilePermissions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A file that its owner shares with a group; only an administrator may always give one to another group. */
class RightsTest {
    @TempDir
    Path folder;

    private Path file;
    private GroupPrincipal club;

    @BeforeEach
    void share() throws IOException {
        file = Files.writeString(folder.resolve("settings.txt"), "first");
        club = file.getFileSystem().getUserPrincipalLookupService().lookupPrincipalByGroupName("daemon");
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-rw----"));
        assumeThat(isGivenTo(club))
                .as("this user may give files to another group")
                .isTrue();
    }

    @Test
    void theGroupAndWhatItMayAreKept() throws IOException {
        WholeFile.write(file, new byte[] {1});
        assertThat(read().group()).isEqualTo(club);
        assertThat(PosixFilePermissions.toString(read().permissions())).isEqualTo("rw-rw----");
    }

    @Test
    void whoMayNotGiveItToTheGroupGivesItToNoOther() throws IOException {
        assertThat(WritingProgram.run(file, "second")).isEqualTo("written");
        assertThat(file).hasContent("second");
        assertThat(read().group()).isNotEqualTo(club);
        assertThat(PosixFilePermissions.toString(read().permissions())).isEqualTo("rw-------");
    }

    @Test
    void whatIsToReplaceItIsItsWritersAloneUntilItDoes() throws IOException {
        try (FileInTheMaking fresh = FileInTheMaking.of(file)) {
            fresh.write(new byte[] {1});
            assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(fresh.path())))
                    .isEqualTo("rw-------");
        }
    }

    private boolean isGivenTo(GroupPrincipal group) throws IOException {
        try {
            Files.getFileAttributeView(file, PosixFileAttributeView.class).setGroup(group);
            return true;
        } catch (FileSystemException notLet) {
            return false;
        }
    }

    private PosixFileAttributes read() throws IOException {
        return Files.readAttributes(file, PosixFileAttributes.class);
    }
}
