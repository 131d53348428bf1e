package org.moultwright.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FileInTheMakingTest {
    @TempDir
    Path folder;

    private Path target;

    @BeforeEach
    void name() {
        target = folder.resolve("room.store");
    }

    @Test
    void itIsThereOnceItIsWholeAndLeavesNothingBeside() throws IOException {
        try (FileInTheMaking file = FileInTheMaking.of(target)) {
            Files.writeString(file.path(), "whole");
            assertThat(target).doesNotExist();
            file.become();
        }
        assertThat(target).hasContent("whole");
        assertThat(folder).isDirectoryNotContaining(file -> !file.equals(target));
    }

    @Test
    void whatAnotherProgramMadeInTheMeantimeStays() throws IOException {
        try (FileInTheMaking file = FileInTheMaking.of(target)) {
            Files.writeString(file.path(), "ours");
            Files.writeString(target, "theirs");
            assertThatThrownBy(file::become).isInstanceOf(FileAlreadyExistsException.class);
        }
        assertThat(target).hasContent("theirs");
        assertThat(folder).isDirectoryNotContaining(file -> !file.equals(target));
    }

    @Test
    void whatAKillLeftIsRemovedWithTheNextButNothingElse() throws IOException {
        Path left = old("room.store.00000000-0000-4000-8000-000000000001.unfinished");
        Path ofAnother = old("attic.store.00000000-0000-4000-8000-000000000001.unfinished");
        Path keepers = old("room.store.unfinished");
        Path young = folder.resolve("room.store.00000000-0000-4000-8000-000000000002.unfinished");
        Files.writeString(young, "being written");
        FileInTheMaking.of(target).close();
        assertThat(left).doesNotExist();
        assertThat(ofAnother).exists();
        assertThat(keepers).exists();
        assertThat(young).exists();
    }

    /** One in the making is gone from the folder at any moment, while another looks through it. */
    @Test
    void manyMadeAtOnceDoNotHinderEachOther() {
        IntStream.range(0, 8).parallel().forEach(thread -> {
            for (int time = 0; time < 100; time++) {
                try (FileInTheMaking file = FileInTheMaking.of(target)) {
                    Files.writeString(file.path(), "whole");
                    file.replace();
                } catch (IOException e) {
                    throw new UncheckedIOException(e);
                }
            }
        });
        assertThat(target).hasContent("whole");
        assertThat(folder).isDirectoryNotContaining(file -> !file.equals(target));
    }

    private Path old(String name) throws IOException {
        Path file = Files.writeString(folder.resolve(name), "old");
        return Files.setLastModifiedTime(file, FileTime.from(Instant.now().minus(Duration.ofHours(2))));
    }
}
