package org.moultwright.device.profile;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.moultwright.device.check.Checksum;

/** What the description of profiles says is so. */
class ProfilesGuideTest {
    private static final Path GUIDE = Path.of("docs", "profiles.md");

    @Test
    void itsExampleMayBeUsed() throws IOException {
        List<String> lines = Files.readAllLines(GUIDE);
        int start = lines.indexOf("```");
        List<String> example = lines.subList(
                start + 1, start + 1 + lines.subList(start + 1, lines.size()).indexOf("```"));
        assertThat(ProfileCheck.of(example).problems()).isEmpty();
        assertThat(ProfileCheck.of(example).code()).contains("slash");
    }

    @Test
    void everyKeyCauseAndChecksumIsDescribed() throws IOException {
        String guide = Files.readString(GUIDE);
        assertThat(ProfileText.KEYS).allSatisfy(key -> assertThat(guide).containsPattern("`" + key + "(: [^`]*)?`"));
        for (FaultCause cause : FaultCause.values()) {
            assertThat(guide).contains("`" + cause.key() + "`");
        }
        for (Checksum checksum : Checksum.values()) {
            assertThat(guide).contains("`" + checksum.key() + "`");
        }
    }
}
