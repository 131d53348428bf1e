package org.moultwright.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystemException;
import java.nio.file.FileSystemLoopException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WholeFileTest {
    @TempDir
    Path folder;

    @Test
    void aNewFileIsThereAndThenTheNextInItsPlace() throws IOException {
        Path file = folder.resolve("settings.txt");
        write(file, "first");
        assertThat(file).hasContent("first");
        write(file, "second");
        assertThat(file).hasContent("second");
        assertThat(names()).containsExactly("settings.txt");
    }

    @Test
    void linesAreWrittenAsTextIntoAFolderThatIsMade() throws IOException {
        Path file = folder.resolve("deep").resolve("settings.txt");
        WholeFile.write(file, List.of("größer = 1", ""));
        assertThat(Files.readAllLines(file)).containsExactly("größer = 1", "");
    }

    @Test
    void whatIsNoFileStaysAndNothingIsLeftBeside() throws IOException {
        Path file = Files.createDirectory(folder.resolve("settings.txt"));
        assertThatThrownBy(() -> write(file, "new"))
                .isInstanceOf(FileSystemException.class)
                .hasMessage(file + ": Not a file");
        assertThat(file).isEmptyDirectory();
        assertThat(names()).containsExactly("settings.txt");
    }

    @Test
    void aFolderThatIsNotThereIsNotMadeForBytes() {
        assertThatThrownBy(() -> write(folder.resolve("gone").resolve("own.sheets"), "new"))
                .isInstanceOf(NoSuchFileException.class);
        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void linksAreFollowedToTheirEndWhereTheFileNeedNotBeYet() throws IOException {
        Path shared = Files.createDirectory(folder.resolve("shared"));
        Files.createSymbolicLink(folder.resolve("linked"), Path.of("shared"));
        Files.createSymbolicLink(shared.resolve("second"), Path.of("..", "ours"));
        Path first = Files.createSymbolicLink(folder.resolve("first"), Path.of("linked", "second"));
        write(first, "new");
        assertThat(folder.resolve("ours")).hasContent("new").isRegularFile();
        assertThat(first).isSymbolicLink();
        assertThat(shared.resolve("second")).isSymbolicLink();
        assertThat(names()).containsExactly("first", "linked", "ours", "shared");
    }

    @Test
    void aLinkThatLeadsNowhereIsRefusedAndStays() throws IOException {
        Path link = Files.createSymbolicLink(folder.resolve("link"), Path.of("link"));
        assertThatThrownBy(() -> write(link, "new")).isInstanceOf(FileSystemLoopException.class);
        Path gone = Files.createSymbolicLink(folder.resolve("stick"), Path.of("unplugged", "settings.txt"));
        assertThatThrownBy(() -> write(gone, "new")).isInstanceOf(NoSuchFileException.class);
        assertThat(names()).containsExactly("link", "stick");
    }

    /** Both are neither what a new file gets here nor what the temporary one has. */
    @Test
    void theOldersPermissionsAreKept() throws IOException {
        Path file = folder.resolve("settings.txt");
        write(file, "first");
        for (String permissions : List.of("rw-r-----", "rw-rw-rw-")) {
            Files.setPosixFilePermissions(file, PosixFilePermissions.fromString(permissions));
            write(file, "second");
            assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
                    .isEqualTo(permissions);
        }
    }

    @Test
    void whatMayNotBeWrittenStaysAndNothingIsLeftBeside() throws IOException {
        Path file = folder.resolve("settings.txt");
        write(file, "first");
        Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("r-xr-xr-x"));
        assertThat(WritingProgram.run(file, "second")).isEqualTo("AccessDeniedException");
        Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwxr-xr-x"));
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("r--r--r--"));
        assertThat(WritingProgram.run(file, "second")).isEqualTo("AccessDeniedException");
        assertThat(file).hasContent("first");
        assertThat(names()).containsExactly("settings.txt");
    }

    @Test
    void aFolderThatMayBeWrittenAndNotReadIsEnough() throws IOException {
        Path file = folder.resolve("settings.txt");
        Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("-wx------"));
        assertThat(WritingProgram.run(file, "new")).isEqualTo("written");
        Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwx------"));
        assertThat(names()).containsExactly("settings.txt");
    }

    /** A file system that knows no permissions, opens no folders and replaces nothing in one step. */
    @Test
    void insideAnArchiveToo() throws IOException {
        try (FileSystem archive = FileSystems.newFileSystem(folder.resolve("room.zip"), Map.of("create", "true"))) {
            Path file = archive.getPath("settings.txt");
            write(file, "first");
            write(file, "second");
            assertThat(Files.readString(file)).isEqualTo("second");
            try (Stream<Path> inside = Files.list(archive.getPath("/"))) {
                assertThat(inside).hasSize(1);
            }
        }
    }

    private static void write(Path file, String content) throws IOException {
        WholeFile.write(file, content.getBytes(StandardCharsets.UTF_8));
    }

    private List<String> names() throws IOException {
        try (Stream<Path> inside = Files.list(folder)) {
            return inside.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }
}
