package org.moultwright.device.profile;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.moultwright.workflow.LineForms;

class ProfileSavingTest {
    private static final List<String> OWN = List.of(
            "code: own-slash",
            "title: Two numbers",
            "port: 9600 8N1",
            "channel: temperature C",
            "channel: humidity %",
            "record: ^(?<temperature>{number})/(?<humidity>{number})$",
            "test: \"25.7/74.2\" -> 25.7 74.2");

    @TempDir
    Path folder;

    @Test
    void aProfileSavedIsUsableAtOnceAndAtTheNextStart() {
        LineProfiles profiles = LineProfiles.withKeepers(folder.resolve("profiles"));
        assertThat(profiles.save(OWN).problems()).isEmpty();
        assertThat(profiles.codes()).contains("own-slash");
        assertThat(profiles.text("own-slash")).isEqualTo(OWN);
        assertThat(LineProfiles.withKeepers(folder.resolve("profiles")).find("own-slash"))
                .isPresent();
    }

    @Test
    void oneThatFailsItsLinesIsNotKeptAndTheOneBeforeStays() {
        LineProfiles profiles = LineProfiles.withKeepers(folder);
        profiles.save(OWN);
        List<String> wrong = new ArrayList<>(OWN);
        wrong.set(6, "test: \"25.7/74.2\" -> 25.7 99");
        LineForms.Checked checked = profiles.save(wrong);
        assertThat(checked.problems())
                .singleElement()
                .satisfies(problem -> assertThat(problem.lineNumber()).isEqualTo(7));
        assertThat(profiles.text("own-slash")).isEqualTo(OWN);
    }

    @Test
    void oneThatIsSavedAgainTakesThePlaceOfItsOwnFile() throws Exception {
        Files.write(folder.resolve("another-name.profile"), OWN);
        LineProfiles profiles = LineProfiles.withKeepers(folder);
        List<String> changed = new ArrayList<>(OWN);
        changed.set(1, "title: Changed");
        profiles.save(changed);
        assertThat(folder.toFile().list()).containsExactly("another-name.profile");
        assertThat(profiles.text("own-slash")).isEqualTo(changed);
    }

    @Test
    void theProgramsOwnCodesCannotBeTaken() {
        LineProfiles profiles = LineProfiles.withKeepers(folder);
        List<String> taken = profiles.text("plain-number");
        assertThat(taken).isNotEmpty();
        assertThat(profiles.save(taken).problems())
                .anyMatch(problem -> problem.sentence().contains("is taken by another profile"));
        assertThat(folder).isEmptyDirectory();
    }
}
