package org.moultwright.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.moultwright.domain.AssumedTiming;
import org.moultwright.domain.RateForm;
import org.moultwright.domain.Stage;
import org.moultwright.file.SmallDisk;

/** The shipped timings, and a keeper's own before them; a file not understood is told of and left as it is. */
class TimingsFileTest {
    private static final String OWN = """
            { "format": "moultwright-timings/1",
              "timings": [
                { "taxon": "Inventa prima",
                  "timing": { "medianWarmDays": { "postembryo": 30, "instar2": 80 },
                              "batchSd": 0.15,
                              "rate": { "form": "linear", "lowerCelsius": 12 } },
                  "source": { "medianWarmDays": "my own four sacs",
                              "batchSd": "a guess",
                              "rate": "no source" } },
                { "taxon": "Inventa",
                  "timing": { "medianWarmDays": { "instar2": 90 },
                              "batchSd": 0.3,
                              "rate": { "form": "briere1", "lowerCelsius": 10, "upperCelsius": 37 } },
                  "source": { "medianWarmDays": "told by a friend", "batchSd": "a guess", "rate": "no source" } } ] }
            """;

    @TempDir
    Path folder;

    private Path place;
    private TimingsFile file;

    @BeforeEach
    void name() {
        place = folder.resolve("settings").resolve(TimingsFile.NAME);
        file = new TimingsFile(place);
    }

    @Test
    void theShippedOneIsGeneralAndSaysWhereEachFigureIsFrom() {
        AssumedTiming general = TimingsFile.shipped().general();
        assertThat(general.timing().medianWarmDays())
                .isEqualTo(
                        Map.of(Stage.POSTEMBRYO, 24.0, Stage.INSTAR1, 41.0, Stage.DARKENED, 61.0, Stage.INSTAR2, 66.0));
        assertThat(general.timing().rate()).isEqualTo(new RateForm.Briere1(11, 38));
        assertThat(general.sources()).containsOnlyKeys("medianWarmDays", "batchSd", "stageSd", "rate");
        assertThat(general.sources().values()).allMatch(source -> source.contains("no source"));
    }

    @Test
    void aSpeciesIsFoundBeforeItsGenusAndThatBeforeTheGeneralOne() throws IOException {
        write(OWN);
        TimingsFile.Loaded loaded = file.load();
        assertThat(loaded.problem()).isEmpty();
        assertThat(loaded.timings().of("inventa prima").timing().batchSd()).isEqualTo(0.15);
        assertThat(loaded.timings().of("Inventa secunda").timing().medianWarmDays())
                .isEqualTo(Map.of(Stage.INSTAR2, 90.0));
        assertThat(loaded.timings().of("Alia prima").isGeneral()).isTrue();
        assertThat(loaded.timings().of("Inventa prima").file()).isEqualTo(place.toString());
        assertThat(loaded.timings().of("Inventa prima").sources()).containsEntry("medianWarmDays", "my own four sacs");
    }

    @Test
    void aWrongLineIsNamedAndNothingOfTheFileIsUsedOrChanged() throws IOException {
        requireRefused(OWN.replace("\"batchSd\": 0.15", "\"batchSd\": 9"), 5, "/timings/0/timing/batchSd, '9'");
        requireRefused(
                OWN.replace("\"rate\": \"no source\" } }, ", "} },").replace("\"a guess\",\n", "\"\",\n"),
                8,
                "batchSd");
        requireRefused(OWN.replace("timings/1", "timings/7"), 1, "moultwright-timings/1");
        requireRefused(OWN.replace("\"taxon\": \"Inventa\"", "\"taxon\": \"Inventa PRIMA\""), 10, "each taxon once");
        requireRefused(
                OWN.replace(
                        "\"timing\": { \"medianWarmDays\": { \"instar2\": 90 }",
                        "\"timing\": { \"medianWarmDays\": { \"instar9\": 90 }"),
                11,
                "instar9");
        requireRefused(OWN.replace("\"batchSd\": 0.3,", "\"batchSd\": 0.3"), 13, "JSON");
        requireRefused(OWN.replace("\"taxon\": \"Inventa\"", "\"taxon\": \"general\""), 11, "every stage but the egg");
        requireRefused(OWN.replace("\"postembryo\": 30", "\"postembryo\": 99"), 4, "rise from stage to stage");
        requireRefused(OWN.replace("\"source\"", "\"stagesd\": 0.2, \"source\""), 7, "no field of this name");
    }

    @Test
    void furtherWrongPlacesAreCounted() throws IOException {
        write(OWN.replace("\"batchSd\": 0.15", "\"batchSd\": 9").replace("\"batchSd\": 0.3", "\"batchSd\": 9"));
        assertThat(file.load().problem().orElseThrow())
                .startsWith(place + ", line 5, /timings/0/timing/batchSd, '9': expected a number within ")
                .contains(". 1 more place is wrong. Mend it there");
    }

    @Test
    void bytesThatAreNoTextAreToldOf() throws IOException {
        Files.createDirectories(place.getParent());
        Files.write(place, new byte[] {'{', (byte) 0xff, '}'});
        assertThat(file.load().problem().orElseThrow()).contains("UTF-8");
    }

    @Test
    void aCopyToBeginFromIsMadeOnceAndIsUnderstood() throws IOException {
        assertThat(file.copyShipped()).isTrue();
        assertThat(file.load().problem()).isEmpty();
        Files.writeString(place, OWN);
        assertThat(file.copyShipped()).isFalse();
        assertThat(place).hasContent(OWN);
    }

    @Test
    void onAFullDiskThereIsNoCopyRatherThanAPartOfOne() {
        Optional<SmallDisk> made = SmallDisk.at(folder, 1);
        assumeThat(made).as("this machine lets a program make a small disk").isPresent();
        try (SmallDisk disk = made.orElseThrow()) {
            disk.fillToTheBrim();
            assertThatThrownBy(file::copyShipped)
                    .isInstanceOf(UncheckedIOException.class)
                    .hasMessageContaining("cannot be written");
            disk.giveRoom();
            assertThat(place.getParent()).isEmptyDirectory();
        }
    }

    private void requireRefused(String content, int line, String named) throws IOException {
        write(content);
        TimingsFile.Loaded loaded = file.load();
        assertThat(loaded.problem().orElseThrow())
                .contains(place + ", line " + line)
                .contains(named)
                .contains("left as it is");
        assertThat(loaded.timings()).isEqualTo(TimingsFile.shipped());
        assertThat(place).hasBinaryContent(content.getBytes(StandardCharsets.UTF_8));
    }

    private void write(String content) throws IOException {
        Files.createDirectories(place.getParent());
        Files.writeString(place, content);
    }
}
