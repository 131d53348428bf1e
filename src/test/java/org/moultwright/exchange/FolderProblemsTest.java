package org.moultwright.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.moultwright.domain.Account;
import org.moultwright.domain.Cause;
import org.moultwright.workflow.BroodFolders.FolderContent;
import org.moultwright.workflow.BroodFolders.FolderProblem;

class FolderProblemsTest {
    private static final String BROOD = """
            { "format": "moultwright-brood/1",
              "code": "XX-1",
              "taxon": "Invented species",
              "zone": "Europe/Lisbon",
              "stages": ["egg", "postembryo"] }
            """;
    private static final String CHECKS = "time,tray,stage,how,count,of\n";
    private static final String MOVES = "time,from,to,stage,count,cause\n";
    private static final String READINGS = "probe,time,temperature_celsius,humidity_percent\n";
    private static final String EXTREMES =
            "container,from,to,min_celsius,max_celsius,min_humidity_percent,max_humidity_percent\n";
    private static final String T = "2026-03-25T18:00:00Z";

    @TempDir
    private Path temporary;

    private Path folder;

    @BeforeEach
    void soundBrood() throws IOException {
        folder = Files.createDirectory(temporary.resolve("xx-1"));
        put(BroodJson.FILE, BROOD);
    }

    @Test
    void aLoneBroodIsEnough() {
        assertThat(read().problems()).isEmpty();
        assertThat(read().record()).isPresent();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "checks.csv   | 2026-02-30T18:00:00Z,A1,egg,full,3,    | time",
                "checks.csv   | 2026-03-25 18:00,A1,egg,full,3,        | time",
                "checks.csv   | 2026-03-25T18:00:00,A1,egg,full,3,     | time",
                "checks.csv   | 2026-03-25T18:00:00Z,,egg,full,3,      | tray",
                "checks.csv   | 2026-03-25T18:00:00Z,dead,egg,full,3,  | tray",
                "checks.csv   | 2026-03-25T18:00:00Z,A1,larva,full,3,  | stage",
                "checks.csv   | 2026-03-25T18:00:00Z,A1,egg,most,3,    | how",
                "checks.csv   | 2026-03-25T18:00:00Z,A1,egg,full,-3,   | count",
                "checks.csv   | 2026-03-25T18:00:00Z,A1,egg,full,3.5,  | count",
                "checks.csv   | 2026-03-25T18:00:00Z,A1,egg,full,,     | count",
                "checks.csv   | 2026-03-25T18:00:00Z,A1,egg,full,99999999999, | count",
                "checks.csv   | 2026-03-25T18:00:00Z,A1,egg,sample,5,3 | of",
                "moves.csv    | 2026-03-25T18:00:00Z,sac,A1,egg,0,     | count",
                "moves.csv    | 2026-03-25T18:00:00Z,A1,A1,egg,1,      | to",
                "extremes.csv | box,2026-03-25T18:00:00Z,2026-03-25T18:00:00Z,20,25,, | to",
                "extremes.csv | box,2026-03-25T18:00:00Z,,20,25,,              | to",
                "extremes.csv | box,2026-03-25T18:00:00Z,2026-04-26T18:00:00Z,20,25,, | to",
                "extremes.csv | box,2026-03-25T18:00:00Z,2026-03-26T18:00:00Z,26,25,, | max_celsius",
                "extremes.csv | box,2026-03-25T18:00:00Z,2026-03-26T18:00:00Z,-41,25,, | min_celsius",
                "extremes.csv | box,2026-03-25T18:00:00Z,2026-03-26T18:00:00Z,20,86,, | max_celsius",
                "extremes.csv | box,2026-03-25T18:00:00Z,2026-03-26T18:00:00Z,20,25,60, | max_humidity_percent",
                "extremes.csv | box,2026-03-25T18:00:00Z,2026-03-26T18:00:00Z,20,25,60,50 | max_humidity_percent",
                "readings.csv | P-1,2026-03-25T18:00:00Z,NaN,          | temperature_celsius",
                "readings.csv | P-1,2026-03-25T18:00:00Z,Infinity,     | temperature_celsius",
                "readings.csv | P-1,2026-03-25T18:00:00Z,1e400,        | temperature_celsius",
                "readings.csv | P-1,2026-03-25T18:00:00Z,0x1p3,        | temperature_celsius",
                "readings.csv | P-1,2026-03-25T18:00:00Z,'27,1',       | ''",
                "readings.csv | P-1,2026-03-25T18:00:00Z,300,          | temperature_celsius",
                "readings.csv | P-1,2026-03-25T18:00:00Z,27,101        | humidity_percent",
                "readings.csv | P-1,2026-03-25T18:00:00Z,27            | ''",
            })
    void aCellThatIsNotOfItsFormIsToldWithItsPlace(String file, String row, String column) throws IOException {
        Map<String, String> headers =
                Map.of("checks.csv", CHECKS, "moves.csv", MOVES, "readings.csv", READINGS, "extremes.csv", EXTREMES);
        put(file, headers.get(file) + row.strip() + "\n");
        assertThat(read().record()).isEmpty();
        assertThat(read().problems()).singleElement().satisfies(problem -> {
            assertThat(problem.file()).isEqualTo(file);
            assertThat(problem.line()).isEqualTo(2);
            assertThat(problem.column()).isEqualTo(column);
            assertThat(problem.expected()).isNotBlank();
        });
    }

    @Test
    void aDayMayStandWithinAWeekButOneSpanOnlyOnce() throws IOException {
        String week = "box,2026-03-20T18:00:00Z,2026-03-27T18:00:00Z,20,25,,\n";
        put("extremes.csv", EXTREMES + week + "box,2026-03-21T18:00:00Z,2026-03-22T18:00:00Z,21,24,,\n");
        assertThat(read().problems()).isEmpty();
        put("extremes.csv", EXTREMES + week + week);
        assertThat(places(read())).containsExactly("extremes.csv:3 from");
    }

    @Test
    void lowestAndHighestMayComeWithoutHumidity() throws IOException {
        put(
                "extremes.csv",
                "to,container,min_celsius,max_celsius,from\n2026-03-22T18:00:00Z,box,21,24,2026-03-21T18:00:00Z\n");
        assertThat(read().problems()).isEmpty();
        assertThat(read().record().orElseThrow().extremes()).hasSize(1);
    }

    @Test
    void everyProblemOfEveryFileIsListed() throws IOException {
        put("checks.csv", CHECKS + T + ",A1,egg,full,x,\n" + T + ",A1,egg,full,3,\n" + T + ",A1,egg,y,3,\n");
        put("moves.csv", MOVES + "\n\r\n" + T + ",\"s\nac\",A1,egg,3,\n" + "never,sac,A1,egg,3,\n");
        put("containers.csv", "container,kind,inside,from,to\nA1,tray,," + T + ",\nA1,tray,," + T + ",\n");
        assertThat(places(read()))
                .containsExactly(
                        "checks.csv:2 count",
                        "checks.csv:4 how",
                        "containers.csv:3 from",
                        "moves.csv:4 from",
                        "moves.csv:6 time");
    }

    @ParameterizedTest
    @CsvSource({"deceased, true", "Dead, false", "handed over, false", "handed_over, false", "Sac, false", "a3, true"})
    void aWordThatIsNoAccountIsToldOfWhereTraysAreKnown(String word, boolean isFineWithoutContainers)
            throws IOException {
        put("moves.csv", MOVES + T + ",sac,A1,egg,20,\n" + T + ",A1," + word + ",egg,1,\n");
        assertThat(read().problems().isEmpty()).isEqualTo(isFineWithoutContainers);
        put("containers.csv", "container,kind,inside,from,to\nA1,tray,," + T + ",\n");
        assertThat(read().problems()).singleElement().satisfies(problem -> {
            assertThat(problem.file()).isEqualTo("moves.csv");
            assertThat(problem.line()).isEqualTo(3);
            assertThat(problem.column()).isEqualTo("to");
            assertThat(problem.value()).isEqualTo(word);
            assertThat(problem.expected()).contains("handed-over", "tray");
        });
    }

    @Test
    void aTrayIsKnownByALookOrByWhatWentInAndOut() throws IOException {
        put("containers.csv", "container,kind,inside,from,to\nA1,tray,," + T + ",\n");
        put("checks.csv", CHECKS + T + ",A2,egg,none,,\n");
        put(
                "moves.csv",
                MOVES + T + ",sac,A1,egg,20,\n" + T + ",A1,A2,egg,1,\n" + T + ",A1,A3,egg,2,\n" + T
                        + ",A3,dead,egg,1,\n");
        assertThat(read().problems()).isEmpty();
        put("moves.csv", MOVES + T + ",sack,A1,egg,20,\n");
        assertThat(places(read())).containsExactly("moves.csv:2 from");
    }

    @Test
    void theListIsCappedAndTheRestCounted() throws IOException {
        put("checks.csv", CHECKS + (T + ",A1,egg,full,x,\n").repeat(2500));
        List<FolderProblem> problems = read().problems();
        assertThat(problems).hasSize(1001);
        assertThat(problems.get(1000).expected()).contains("1500");
    }

    @Test
    void headersAreToldOf() throws IOException {
        put("checks.csv", "");
        put("moves.csv", "time,from,to,stage,count,count\n");
        put("mould.csv", "time,tray\n" + T + ",A1\n");
        put("care.csv", "time,tray,what,note\n");
        put("pots.csv", "pot,tray,potted,label,colour\n");
        assertThat(places(read())).containsExactly("checks.csv:1 ", "mould.csv:1 where", "moves.csv:1 count");
        assertThat(read().notices()).anySatisfy(notice -> assertThat(notice).contains("pots.csv", "colour"));
    }

    @Test
    void aForgottenQuotationMarkIsToldWithTheLineItBeginsIn() throws IOException {
        put(
                "moves.csv",
                MOVES + T + ",sac,A1,egg,3,\n" + T + ",\"sac,A1,egg,3,\n" + (T + ",sac,A1,egg,3,\n").repeat(9));
        assertThat(places(read())).containsExactly("moves.csv:3 ");
    }

    @Test
    void aRowOfTenMegabytesIsRefusedBeforeItFillsTheMemory() throws IOException {
        put("moves.csv", MOVES + T + ",sac,A1,egg,3," + "x".repeat(10_000_000) + "\n");
        assertThat(places(read())).containsExactly("moves.csv:2 ");
    }

    @Test
    void bytesThatAreNoUtf8AreToldWithTheirLine() throws IOException {
        byte[] latin = (CHECKS + (T + ",A1,egg,seen,,\n").repeat(900) + T + ",Bäh,egg,seen,,\n")
                .getBytes(StandardCharsets.ISO_8859_1);
        Files.write(folder.resolve("checks.csv"), latin);
        assertThat(places(read())).containsExactly("checks.csv:902 ");
    }

    @Test
    void aByteOrderMarkAndAnyLineEndAreFine() throws IOException {
        put("checks.csv", "\uFEFF" + CHECKS.replace("\n", "\r\n") + T + ",A1,egg,none,,");
        assertThat(read().problems()).isEmpty();
        assertThat(read().record().orElseThrow().checks()).hasSize(1);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{ \"format\": \"moultwright-brood/1\",\\n \"code\": | 2 | ''",
                "[]                                                   | 1 | ''",
                "{ \"format\": \"moultwright-brood/1\", \"format\": \"x\" } | 1 | ''",
            })
    void brokenJsonIsToldWithItsLine(String json, int line, String column) throws IOException {
        put(BroodJson.FILE, json.replace("\\n", "\n"));
        assertThat(places(read())).containsExactly("brood.json:" + line + " " + column);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "moultwright-brood/1 | moultwright-brood/2 | /format | 1",
                "Europe/Lisbon       | Europe/Nowhere      | /zone   | 4",
                "postembryo          | larva               | /stages/1 | 5",
            })
    void aFieldThatIsNotOfItsFormIsToldWithItsLine(String from, String to, String pointer, int line)
            throws IOException {
        put(BroodJson.FILE, BROOD.replace(from, to));
        assertThat(places(read())).contains("brood.json:" + line + " " + pointer);
    }

    @Test
    void aNumberBeyondAllNumbersIsRefused() throws IOException {
        put(BroodJson.FILE, BROOD.replace("\"zone\"", "\"referenceTemperatureCelsius\": 1e400, \"zone\""));
        assertThat(places(read())).containsExactly("brood.json:4 /referenceTemperatureCelsius");
        put(BroodJson.FILE, BROOD.replace("\"zone\"", "\"referenceTemperatureCelsius\": NaN, \"zone\""));
        assertThat(places(read())).containsExactly("brood.json:4 ");
    }

    @Test
    void aLinkIsNotFollowed() throws IOException {
        Path elsewhere = Files.writeString(folder.resolveSibling("elsewhere.csv"), CHECKS);
        Files.createSymbolicLink(folder.resolve("checks.csv"), elsewhere);
        assertThat(places(read())).containsExactly("checks.csv:0 ");
    }

    @Test
    void aZipOfTheFilesOrOfTheirFolderReadsTheSame() throws IOException {
        put("checks.csv", CHECKS + T + ",A1,egg,none,,\n");
        assertThat(new PlainBroodFolders().read(zip("")).record()).isEqualTo(read().record());
        assertThat(new PlainBroodFolders().read(zip("xx-1/")).record()).isEqualTo(read().record());
    }

    @Test
    void whatIsNoFolderIsAProblemAndNoFault() throws IOException {
        Path nothing = folder.resolve("nothing");
        assertThat(new PlainBroodFolders().read(nothing).problems()).hasSize(1);
        Path noZip = Files.writeString(folder.resolveSibling("broken.zip"), "PK and nothing more");
        assertThat(new PlainBroodFolders().read(noZip).problems()).hasSize(1);
    }

    @Test
    void rowsThatDoNotAgreeAreKeptAndListedAsQuestions() throws IOException {
        put("moves.csv", MOVES + T + ",sac,A1,egg,57,opened\n2026-03-27T18:00:00Z,A1,dead,egg,1,\n");
        put(
                "checks.csv",
                CHECKS + "2026-03-26T18:00:00Z,A1,egg,full,58,\n2026-03-27T18:00:00Z,A1,egg,full,57,\n"
                        + "2026-03-28T18:00:00Z,A1,egg,full,60,\n2026-03-29T18:00:00Z,A1,egg,full,57,\n");
        FolderContent content = read();
        assertThat(content.problems()).isEmpty();
        assertThat(content.record().orElseThrow().ledger().entries())
                .filteredOn(entry -> entry.cause().equals(Cause.EARLIER_MISCOUNT))
                .singleElement()
                .satisfies(entry -> {
                    assertThat(entry.from()).isEqualTo(Account.SAC);
                    assertThat(entry.count()).isEqualTo(1);
                });
        assertThat(content.notices())
                .anySatisfy(notice -> assertThat(notice).contains("open question", "60 counted", "57 expected"));
    }

    @Test
    void readingsOfOneInstantThatDifferAreToldOf() throws IOException {
        String twice = "P-1,2026-03-25T18:00:00Z,27,70\nP-1,2026-03-25T19:00:00Z,27,\n";
        put("readings.csv", READINGS + twice + twice + "P-2,2026-03-25T18:00:00Z,29,70\n");
        assertThat(read().notices()).noneSatisfy(notice -> assertThat(notice).contains("another value"));
        put("readings.csv", READINGS + twice + "P-1,2026-03-25T18:00:00Z,29,70\nP-1,2026-03-25T17:00:00Z,26,70\n");
        assertThat(read().notices())
                .contains("readings.csv: of probe 'P-1' 1 readings are of an instant that has another value already; "
                        + "the first is kept");
    }

    private Path zip(String prefix) throws IOException {
        Path file = folder.resolveSibling("zipped" + prefix.length() + ".zip");
        try (FileSystem zip = FileSystems.newFileSystem(file, Map.of("create", "true"))) {
            Path top = zip.getPath("/" + prefix);
            Files.createDirectories(top);
            for (String name : List.of(BroodJson.FILE, "checks.csv")) {
                Files.copy(folder.resolve(name), top.resolve(name));
            }
        }
        return file;
    }

    private void put(String name, String content) throws IOException {
        Files.writeString(folder.resolve(name), content);
    }

    private FolderContent read() {
        return new PlainBroodFolders().read(folder);
    }

    private static List<String> places(FolderContent content) {
        return content.problems().stream()
                .map(problem -> problem.file() + ":" + problem.line() + " " + problem.column())
                .toList();
    }
}
