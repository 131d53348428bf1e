package org.moultwright.device.profile;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.moultwright.workflow.LineForms;

class ProfileFolderTest {
    @TempDir
    Path folder;

    @Test
    void aKeepersProfileIsUsedLikeOneOfTheProgram() throws IOException {
        write("mine.profile", SoundText.LINES);
        LineProfiles profiles = LineProfiles.withKeepers(folder);
        assertThat(profiles.find("sound").orElseThrow().decode("26").decoded())
                .isEqualTo(new Decoded.Measured(26, Double.NaN));
        assertThat(form(profiles, "mine.profile").problems()).isEmpty();
        assertThat(profiles.codes()).startsWith("plain-number").endsWith("sound");
    }

    @Test
    void aCodeOfTheProgramIsNotOverridden() throws IOException {
        write("mine.profile", coded("plain-number"));
        LineProfiles profiles = LineProfiles.withKeepers(folder);
        assertThat(profiles.find("plain-number").orElseThrow().title()).isEqualTo("One number a line");
        assertThat(form(profiles, "mine.profile").problems())
                .singleElement()
                .satisfies(problem -> assertThat(problem.sentence()).contains("is taken"));
    }

    @Test
    void ofTwoWithOneCodeTheFirstByNameIsUsed() throws IOException {
        write("a.profile", SoundText.LINES);
        write("b.profile", SoundText.LINES);
        LineProfiles profiles = LineProfiles.withKeepers(folder);
        assertThat(profiles.codes()).containsOnlyOnce("sound");
        assertThat(form(profiles, "a.profile").problems()).isEmpty();
        assertThat(form(profiles, "b.profile").problems()).isNotEmpty();
    }

    @Test
    void oneThatFailsItsTestsIsListedAndNotUsable() throws IOException {
        write("mine.profile", SoundText.lines("test: \"27\" -> 26"));
        LineProfiles profiles = LineProfiles.withKeepers(folder);
        assertThat(profiles.find("sound")).isEmpty();
        assertThat(form(profiles, "mine.profile").problems()).hasSize(1);
    }

    @Test
    void whatCannotBeReadIsAProblemAndHindersNothingElse() throws IOException {
        Files.createDirectory(folder.resolve("folder.profile"));
        Files.write(folder.resolve("bytes.profile"), new byte[] {(byte) 0xFF, 0, 1});
        Files.write(folder.resolve("large.profile"), new byte[70_000]);
        write("notes.txt", List.of("not a profile"));
        write("mine.profile", SoundText.LINES);
        LineProfiles profiles = LineProfiles.withKeepers(folder);
        assertThat(profiles.codes()).endsWith("sound");
        assertThat(profiles.forms().stream().flatMap(form -> form.source().stream()))
                .containsExactly("bytes.profile", "folder.profile", "large.profile", "mine.profile");
        assertThat(form(profiles, "bytes.profile").problems()).isNotEmpty();
        assertThat(form(profiles, "folder.profile").problems()).isNotEmpty();
        assertThat(form(profiles, "large.profile").problems()).isNotEmpty();
    }

    @Test
    void noFolderIsNoProfiles() {
        assertThat(LineProfiles.withKeepers(folder.resolve("none")).codes())
                .isEqualTo(LineProfiles.bundled().codes());
    }

    private void write(String name, List<String> lines) throws IOException {
        Files.write(folder.resolve(name), lines);
    }

    private static List<String> coded(String code) {
        return SoundText.LINES.stream()
                .map(line -> line.startsWith("code") ? "code: " + code : line)
                .toList();
    }

    private static LineForms.Form form(LineProfiles profiles, String source) {
        return profiles.forms().stream()
                .filter(form -> form.source().equals(Optional.of(source)))
                .findFirst()
                .orElseThrow();
    }
}
