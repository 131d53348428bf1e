package org.moultwright.boot.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is believed and assumed, without a window: an unopened sac, and the keeper's own timings. */
class BeliefCommandsTest {
    private static final String BROOD = """
            { "format": "moultwright-brood/1", "code": "GP-26-A", "taxon": "Inventa prima", "zone": "UTC",
              "laid": { "earliest": "2026-03-01T00:00:00Z", "latest": "2026-03-01T00:00:00Z" },
              "stages": ["egg", "postembryo", "instar1", "instar2"] }
            """;
    private static final String TIMINGS = """
            { "format": "moultwright-timings/1",
              "timings": [
                { "taxon": "Inventa",
                  "timing": { "medianWarmDays": { "postembryo": 30, "instar1": 50, "instar2": 80 },
                              "batchSd": 0.1,
                              "rate": { "form": "linear", "lowerCelsius": 12 } },
                  "stageSd": 0.05,
                  "source": { "medianWarmDays": "invented", "batchSd": "invented", "rate": "invented",
                              "stageSd": "invented" } } ] }
            """;

    @TempDir
    Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();
    private Path brood;
    private Path timings;

    @BeforeEach
    void write() throws IOException {
        brood = Files.createDirectory(folder.resolve("gp-26-a"));
        Files.writeString(brood.resolve("brood.json"), BROOD);
        Files.writeString(brood.resolve("containers.csv"), """
                container,kind,inside,from,to
                sac,hammock,box M,2026-03-01T00:00:00Z,
                """);
        Files.writeString(brood.resolve("setpoints.csv"), """
                container,from,to,temperature_celsius,humidity_percent
                box M,2026-03-01T00:00:00Z,,25.0,
                """);
        timings = Files.writeString(folder.resolve("timings.json"), TIMINGS);
    }

    /** At 25 °C a line from 12 °C lives 13/15 warm-days a day: 50 of them are lived on 27 April at 16:37. */
    @Test
    void anUnopenedSacHasDatesBesideNoTrays() throws IOException {
        assertThat(ofTheSac("--json")).isZero();
        JsonNode json = new ObjectMapper().readTree(out.toString());
        assertThat(json.at("/trays")).isEmpty();
        assertThat(json.has("yield")).isFalse();
        assertThat(json.at("/priorFrom").asText()).isEqualTo("taxon");
        assertThat(json.at("/sac/days").asDouble()).isEqualTo(10);
        assertThat(json.at("/sac/warmDays").asDouble()).isEqualTo(8.67);
        assertThat(json.at("/sac/moults")).hasSize(3);
        assertThat(json.at("/sac/moults/1/into").asText()).isEqualTo("instar1");
        assertThat(json.at("/sac/moults/1/half/p50").asText()).isBetween("2026-04-25", "2026-04-30");
        assertThat(json.at("/sac/pull/to").asText())
                .isEqualTo(json.at("/sac/moults/1/half/p50").asText());
        assertThat(json.at("/notes").toString()).contains("Nobody has opened the sac");
    }

    @Test
    void whereTheTimingIsFromIsSaidAndWhoTaughtNothing() {
        assertThat(ofTheSac("--learn-from", brood.toString(), "demo-data/cc-26-b"))
                .isZero();
        assertThat(out.toString()).contains("GP-26-A: timing as kept for the species");
        assertThat(err.toString())
                .contains(
                        "'CC-26-B' (Chromatopelma cyaneopubescens) teaches nothing here", "'GP-26-A' (Inventa prima)");
    }

    @Test
    void fromHowManyBroodsItLearnedIsSaid() {
        String[] taught = {
            "forecast", "demo-data/cc-26-c", "--as-of", "2026-05-10T20:00:00Z", "--learn-from", "demo-data/cc-26-b"
        };
        assertThat(run(taught)).isZero();
        assertThat(out.toString()).contains("CC-26-C: timing learned from 1 completed brood of the species.");
        assertThat(err.toString()).isEmpty();
    }

    @Test
    void theSameInWords() {
        assertThat(ofTheSac()).isZero();
        assertThat(out.toString())
                .contains("Sac: 10 days, 8.7 warm-days old.")
                .contains("half are nymphs ")
                .contains("pull ")
                .contains("common practice, no source");
    }

    @Test
    void aFileNotUnderstoodIsToldOfAndTheShippedOneHolds() throws IOException {
        Files.writeString(timings, TIMINGS.replace("0.1,", "7,"));
        assertThat(ofTheSac("--json")).isZero();
        assertThat(new ObjectMapper().readTree(out.toString()).at("/priorFrom").asText())
                .isEqualTo("general");
        assertThat(err.toString()).contains("line 5").contains("batchSd").contains("it is left as it is");
        assertThat(run("timings", "--timings", timings.toString())).isEqualTo(1);
        assertThat(timings).hasContent(TIMINGS.replace("0.1,", "7,"));
    }

    @Test
    void theTimingsAreToldWithTheirSourcesAndPlace() {
        assertThat(run("timings", "--timings", timings.toString())).isZero();
        assertThat(out.toString())
                .contains("Inventa, from " + timings)
                .contains("medianWarmDays: invented")
                .contains("general, from the file shipped with Moultwright")
                .contains("Your own file: " + timings);
        assertThat(run("timings", "--copy", "--timings", timings.toString())).isEqualTo(1);
        Path fresh = folder.resolve("settings").resolve("timings.json");
        assertThat(run("timings", "--copy", "--timings", fresh.toString())).isZero();
        assertThat(fresh).content().contains("moultwright-timings/1");
    }

    /** The forecast of the sac as believed by the keeper's own timings, ten days after its laying. */
    private int ofTheSac(String... more) {
        List<String> arguments = new ArrayList<>(List.of("forecast", brood.toString()));
        arguments.addAll(List.of("--timings", timings.toString(), "--as-of", "2026-03-11T00:00:00Z"));
        arguments.addAll(List.of(more));
        return run(arguments.toArray(String[]::new));
    }

    private int run(String... arguments) {
        List.of(out, err).forEach(writer -> writer.getBuffer().setLength(0));
        return Commands.run(new NoWindow(), new PrintWriter(out, true), new PrintWriter(err, true), arguments);
    }

    @picocli.CommandLine.Command(name = "moultwright")
    private static final class NoWindow implements Runnable {
        @Override
        public void run() {
            throw new AssertionError("no command was given");
        }
    }
}
