package org.moultwright.boot;

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
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.moultwright.boot.command.Commands;
import org.moultwright.exchange.PlainBroodFolders;
import org.moultwright.workflow.BroodFolders.FolderContent;

/** The commands as a script meets them: arguments in; exit code, standard output and standard error out. */
class CommandsStoreTest {
    private static final String DEMO = "demo-data/cc-26-a";

    @TempDir
    Path folder;

    @Test
    void wrongUsageIsTwoAndAFaultOfTheInputIsOne() {
        assertThat(run("forecast").code()).isEqualTo(2);
        assertThat(run("no-such-command").code()).isEqualTo(2);
        Said noInstant = run("forecast", DEMO, "--as-of", "yesterday");
        assertThat(noInstant.code()).isEqualTo(2);
        assertThat(noInstant.err()).contains("'yesterday' is no instant such as 2026-04-09T19:00:00Z");
        Said missing = run("forecast", folder.resolve("nothing").toString());
        assertThat(missing.code()).isEqualTo(1);
        assertThat(missing.err()).contains("nothing").contains("expected");
        Said noStore = run("check-store", folder.resolve("none.store").toString());
        assertThat(noStore.code()).isEqualTo(1);
        assertThat(folder.resolve("none.store")).doesNotExist();
    }

    @Test
    void forecastAnswersOneDocumentAFolder() throws IOException {
        Said said = run("forecast", DEMO, "demo-data/cc-26-b", "--as-of", "2026-04-09T20:00:00Z", "--json");
        assertThat(said.code()).isZero();
        String[] lines = said.out().strip().split("\\R");
        assertThat(lines).hasSize(2);
        JsonNode first = new ObjectMapper().readTree(lines[0]);
        assertThat(first.at("/brood").asText()).isEqualTo("CC-26-A");
        assertThat(first.at("/asOf").asText()).isEqualTo("2026-04-09T20:00:00Z");
        assertThat(first.at("/priorFrom").asText()).isEqualTo("folder");
        assertThat(first.at("/trays")).hasSize(2);
        JsonNode moult = first.at("/trays/0/moults/0");
        assertThat(moult.at("/half/p10").asText())
                .isLessThan(moult.at("/half/p90").asText());
        assertThat(first.at("/yield/p90").asDouble()).isBetween(60.0, 118.0);
        assertThat(run("forecast", DEMO, "demo-data/cc-26-b", "--as-of", "2026-04-09T20:00:00Z", "--json")
                        .out())
                .isEqualTo(said.out());
    }

    @Test
    void aFileOfReadingsIsTakenInOnceAndOneThatIsNoneNotAtAll() throws IOException {
        String store = folder.resolve("room.store").toString();
        Path file = Files.writeString(folder.resolve("logger.csv"), """
                Zeit;Temperatur;Feuchte
                03.05.2026 18:00;26,5;71
                03.05.2026 18:10;26,7;72
                03.05.2026 18:20;Err;72
                """);
        String[] takeIn = {
            "take-in", file.toString(), "--store", store, "--probe", "P-7", "--in", "box 1", "--zone", "Europe/Lisbon"
        };
        Said said = run(takeIn);
        assertThat(said.code()).as(said.err()).isZero();
        assertThat(said.out()).contains("P-7 in box 1: 2 readings, 2 of them new; 1 rows are none");
        assertThat(said.err()).contains("line 4: ");
        assertThat(run(takeIn).out()).contains("2 readings, 0 of them new");
        assertThat(run("readings", "--store", store, "--probe", "P-7").out())
                .contains("2026-05-03T17:00:00Z,26.5,71", "2026-05-03T17:10:00Z,26.7,72");

        Path other = Files.writeString(folder.resolve("letter.csv"), "Dear keeper,\nhello\n");
        Said none = run("take-in", other.toString(), "--store", store, "--probe", "P-8", "--in", "box 1");
        assertThat(none.code()).isEqualTo(1);
        assertThat(run("readings", "--store", store, "--probe", "P-8").code()).isEqualTo(1);
        Said noZone = run(
                "take-in", file.toString(), "--store", store, "--probe", "P-8", "--in", "box 1", "--zone", "Nowhere");
        assertThat(noZone.code()).isEqualTo(1);
        assertThat(noZone.err()).contains("'Nowhere' is no zone");
    }

    @Test
    void aFolderTakenInTwiceChangesNothingAndComesOutAsItWas() {
        String store = folder.resolve("room.store").toString();
        assertThat(run("import", DEMO, "--store", store).out())
                .contains("CC-26-A")
                .contains("taken in");
        assertThat(run("import", DEMO, "--store", store).out()).contains("CC-26-A: nothing new");
        Path copy = folder.resolve("copy");
        assertThat(run("export", "CC-26-A", "--store", store, "--to", copy.toString())
                        .code())
                .isZero();
        FolderContent before = new PlainBroodFolders().read(Path.of(DEMO));
        FolderContent after = new PlainBroodFolders().read(copy);
        assertThat(after.problems()).isEmpty();
        assertThat(after.record()).isEqualTo(before.record());
        assertThat(run("import", copy.toString(), "--store", store).out()).contains("nothing new");
        assertThat(run("check-store", store).out()).contains("all is well");
        assertThat(run("export", "CC-26-A", "--store", store, "--to", copy.toString())
                        .code())
                .isEqualTo(1);
    }

    @Test
    void readingsLabelsAndBackupComeFromTheStore() throws IOException {
        String store = folder.resolve("room.store").toString();
        run("import", DEMO, "--store", store);
        Said readings = run(
                "readings",
                "--store",
                store,
                "--probe",
                "P-1",
                "--from",
                "2026-04-01T00:00:00Z",
                "--to",
                "2026-04-01T01:00:00Z");
        assertThat(readings.out().split("\r\n")).hasSize(1 + 12);
        assertThat(readings.out()).startsWith("time,temperature_celsius,humidity_percent,quality\r\n");
        assertThat(run("readings", "--store", store, "--probe", "P-9").code()).isEqualTo(1);
        Path pdf = folder.resolve("labels.pdf");
        assertThat(run(
                                "labels",
                                "--store",
                                store,
                                "--brood",
                                "CC-26-A",
                                "--sheet",
                                "a4-3x8-70x37",
                                "--to",
                                pdf.toString())
                        .code())
                .isZero();
        assertThat(Files.size(pdf)).isPositive();
        Said noSuchLabel = run(
                "labels",
                "--store",
                store,
                "--brood",
                "CC-26-A",
                "--sheet",
                "a4-3x8-70x37",
                "--start",
                "25",
                "--to",
                pdf.toString());
        assertThat(noSuchLabel.code()).isEqualTo(1);
        assertThat(noSuchLabel.err()).contains("It has labels 1 to 24.");
        assertThat(run("labels", "--store", store, "--brood", "CC-26-A", "--sheet", "a9", "--to", pdf.toString())
                        .err())
                .contains("a4-3x8-70x37");
        String backup = folder.resolve("backup.store").toString();
        assertThat(run("backup", store, "--to", backup).code()).isZero();
        String restored = folder.resolve("restored.store").toString();
        assertThat(run("restore", backup, "--to", restored).code()).isZero();
        assertThat(run("check-store", restored).out()).contains("all is well");
        assertThat(run("restore", backup, "--to", store).code()).isEqualTo(1);
    }

    @Test
    void climateAnswersOneDocumentAContainer() throws IOException {
        Said said = run("climate", DEMO, "--json");
        assertThat(said.code()).isZero();
        List<JsonNode> documents = new ArrayList<>();
        for (String line : said.out().lines().toList()) {
            documents.add(new ObjectMapper().readTree(line));
        }
        assertThat(documents)
                .extracting(document -> document.at("/container").asText())
                .containsExactly("A1", "A2", "box 1");
        JsonNode tray = documents.get(0);
        assertThat(tray.at("/brood").asText()).isEqualTo("CC-26-A");
        assertThat(tray.at("/warmDays").asDouble()).isBetween(50.0, 120.0);
        assertThat(tray.at("/temperatureCelsius/lowest").asDouble())
                .isLessThan(tray.at("/temperatureCelsius/mean").asDouble());
        assertThat(tray.at("/sources/0/source").asText()).isNotEmpty();
        assertThat(run("climate", DEMO, "--container", "box 1").out())
                .startsWith("box 1, ")
                .contains("warm-days", "dew point");
        Said unknown = run("climate", DEMO, "--container", "B9");
        assertThat(unknown.code()).isEqualTo(1);
        assertThat(unknown.err()).contains("B9", "box 1");
        assertThat(run("climate").code()).isEqualTo(2);
    }

    private static Said run(String... arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int code = Commands.run(
                new OpenWorkbench((fault, opening) -> {}), new PrintWriter(out), new PrintWriter(err), arguments);
        return new Said(code, out.toString(), err.toString());
    }

    private record Said(int code, String out, String err) {}
}
