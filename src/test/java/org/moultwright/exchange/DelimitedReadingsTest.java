package org.moultwright.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.moultwright.workflow.ColumnMeaning.CELSIUS;
import static org.moultwright.workflow.ColumnMeaning.DATE;
import static org.moultwright.workflow.ColumnMeaning.DATE_AND_TIME;
import static org.moultwright.workflow.ColumnMeaning.EPOCH_MILLIS;
import static org.moultwright.workflow.ColumnMeaning.EPOCH_SECONDS;
import static org.moultwright.workflow.ColumnMeaning.FAHRENHEIT;
import static org.moultwright.workflow.ColumnMeaning.HUMIDITY;
import static org.moultwright.workflow.ColumnMeaning.NOTHING;
import static org.moultwright.workflow.ColumnMeaning.TIME;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.moultwright.domain.Quality;
import org.moultwright.domain.Reading;
import org.moultwright.workflow.ColumnMeaning;
import org.moultwright.workflow.DateOrder;
import org.moultwright.workflow.DocumentException;
import org.moultwright.workflow.ReadingFiles.Row;
import org.moultwright.workflow.ReadingMapping;

class DelimitedReadingsTest {
    private static final ZoneId BERLIN = ZoneId.of("Europe/Berlin");

    private final DelimitedReadings files = new DelimitedReadings();

    @TempDir
    private Path folder;

    @Test
    void aGermanLoggerWithSemicolonsAndDecimalCommas() throws IOException {
        Path file = file(
                StandardCharsets.ISO_8859_1,
                "Seriennummer;4711",
                "Nr.;Zeit;Temperatur [°C];Feuchte [%rF];Taupunkt [°C]",
                "1;28.02.2026 23:50:00;26,4;71,5;20,8",
                "2;01.03.2026 00:00:00;-0,5;72;20,9");
        ReadingMapping mapping = files.propose(file, BERLIN);
        assertThat(mapping.charset()).isEqualTo(StandardCharsets.ISO_8859_1);
        assertThat(mapping.delimiter()).isEqualTo(';');
        assertThat(mapping.rowsBefore()).isEqualTo(2);
        assertThat(mapping.columns()).containsExactly(NOTHING, DATE_AND_TIME, CELSIUS, HUMIDITY, NOTHING);
        assertThat(mapping.dates()).isEqualTo(DateOrder.DAY_FIRST);
        assertThat(readings(file, mapping))
                .containsExactly(
                        reading("2026-02-28T22:50:00Z", 26.4, 71.5), reading("2026-02-28T23:00:00Z", -0.5, 72));
    }

    @Test
    void anAmericanLoggerInFahrenheitWithTwelveHours() throws IOException {
        Path file = file(
                StandardCharsets.UTF_8,
                "\"Date\",\"Time\",\"Temp (°F)\",\"RH (%)\"",
                "03/04/2026,11:59:30 PM,80.6,70",
                "03/05/2026,12:00:30 AM,\"98.6\",71");
        ReadingMapping mapping = files.propose(file, ZoneId.of("America/Chicago"));
        assertThat(mapping.columns()).containsExactly(DATE, TIME, FAHRENHEIT, HUMIDITY);
        assertThat(mapping.dates()).as("days that follow each other").isEqualTo(DateOrder.MONTH_FIRST);
        assertThat(readings(file, mapping))
                .containsExactly(reading("2026-03-05T05:59:30Z", 27, 70), reading("2026-03-05T06:00:30Z", 37, 71));
    }

    @Test
    void figuresNoRoomHasInCelsiusAreFahrenheitUnlessTheFileSaysOtherwise() throws IOException {
        Path unsaid = file(StandardCharsets.UTF_8, "time,incubator", "2026-03-01 10:00,80.6", "2026-03-01 10:10,80.7");
        assertThat(files.propose(unsaid, BERLIN).columns()).containsExactly(DATE_AND_TIME, FAHRENHEIT);
        Path said = file(StandardCharsets.UTF_8, "time,incubator (C)", "2026-03-01 10:00,80.6");
        assertThat(files.propose(said, BERLIN).columns()).containsExactly(DATE_AND_TIME, CELSIUS);
    }

    @Test
    void tabsInUtf16WithoutAnyHeader() throws IOException {
        for (Charset charset : List.of(StandardCharsets.UTF_16LE, StandardCharsets.UTF_16BE)) {
            for (String mark : List.of("", "\uFEFF")) {
                Path file = folder.resolve("logger.txt");
                Files.writeString(file, mark + "2026-03-01T10:00:00\t26.4 °C\n2026-03-01T10:10:00\t26.5 °C\n", charset);
                ReadingMapping mapping = files.propose(file, ZoneId.of("UTC"));
                assertThat(mapping.charset()).isEqualTo(charset);
                assertThat(mapping.rowsBefore()).isZero();
                assertThat(readings(file, mapping))
                        .containsExactly(
                                reading("2026-03-01T10:00:00Z", 26.4, Double.NaN),
                                reading("2026-03-01T10:10:00Z", 26.5, Double.NaN));
            }
        }
    }

    @Test
    void secondsAndMillisecondsSince1970() throws IOException {
        Path seconds = file(StandardCharsets.UTF_8, "time,hum,temp", "1772359200,71,26.4", "1772359260,70,26.5");
        assertThat(files.propose(seconds, BERLIN).columns()).containsExactly(EPOCH_SECONDS, HUMIDITY, CELSIUS);
        assertThat(readings(seconds, files.propose(seconds, BERLIN)).get(0).takenAt())
                .isEqualTo("2026-03-01T10:00:00Z");
        Path millis = file(StandardCharsets.UTF_8, "1772359200250;26.4", "1772359260250;26.5");
        assertThat(files.propose(millis, BERLIN).columns()).containsExactly(EPOCH_MILLIS, CELSIUS);
        assertThat(readings(millis, files.propose(millis, BERLIN)).get(0).takenAt())
                .isEqualTo("2026-03-01T10:00:00.250Z");
    }

    @Test
    void anOffsetInTheFileWinsOverTheZone() throws IOException {
        Path file = file(StandardCharsets.UTF_8, "time,t", "2026-03-01T10:00:00+05:30,26.4", "2026-03-01T10:00:00Z,26");
        assertThat(readings(file, files.propose(file, BERLIN)))
                .extracting(reading -> reading.takenAt().toString())
                .containsExactly("2026-03-01T04:30:00Z", "2026-03-01T10:00:00Z");
    }

    /** Berlin 2025-03-30 02:30 does not exist; 2025-10-26 02:30 happens twice, at 00:30Z and 01:30Z (tzdb). */
    @Test
    void clocksThatChange() throws IOException {
        Path spring = file(StandardCharsets.UTF_8, "2025-03-30 01:30;20", "2025-03-30 02:30;21", "2025-03-30 03:30;22");
        List<Row> rows = files.first(spring, files.propose(spring, BERLIN), 9);
        assertThat(rows.get(1).reading()).isEmpty();
        assertThat(rows.get(1).reason()).contains("never was").contains("Europe/Berlin");
        Path autumn = file(
                StandardCharsets.UTF_8,
                "2025-10-26 01:30;20",
                "2025-10-26 02:30;21",
                "2025-10-26 02:30;22",
                "2025-10-26 03:30;23");
        assertThat(readings(autumn, files.propose(autumn, BERLIN)))
                .extracting(reading -> reading.takenAt().toString())
                .containsExactly(
                        "2025-10-25T23:30:00Z", "2025-10-26T00:30:00Z", "2025-10-26T01:30:00Z", "2025-10-26T02:30:00Z");
        Path backwards = file(
                StandardCharsets.UTF_8,
                "2025-10-26 03:10;23",
                "2025-10-26 02:40;22",
                "2025-10-26 02:10;22",
                "2025-10-26 02:40;21",
                "2025-10-26 02:10;21",
                "2025-10-26 01:40;20");
        assertThat(readings(backwards, files.propose(backwards, BERLIN)))
                .extracting(reading -> reading.takenAt().toString())
                .containsExactly(
                        "2025-10-26T02:10:00Z",
                        "2025-10-26T01:40:00Z",
                        "2025-10-26T01:10:00Z",
                        "2025-10-26T00:40:00Z",
                        "2025-10-26T00:10:00Z",
                        "2025-10-25T23:40:00Z");
    }

    @Test
    void everyRowThatMeansNothingSaysWhyAndWhere() throws IOException {
        Path file = file(
                StandardCharsets.UTF_8,
                "time,temperature,humidity",
                "2026-03-01 10:00,26.4,70",
                "2026-03-01 10:10,ERR,70",
                "",
                "2026-03-01 10:20,-127,70",
                "2026-03-01 10:30,,70",
                "yesterday,26.4,70",
                "2026-02-30 10:40,26.4,70",
                "2026-03-01 10:50,26.4,120",
                "2026-03-01 11:00,26.4,--",
                "2026-03-01 11:10",
                "2026-03-01 25:10,26.4,70",
                "end of file");
        List<Row> rows = files.first(file, files.propose(file, BERLIN), 99);
        assertThat(rows)
                .filteredOn(row -> row.reading().isPresent())
                .extracting(Row::line)
                .containsExactly(2L, 10L);
        assertThat(rows)
                .filteredOn(row -> !row.reason().isEmpty())
                .extracting(row -> row.line() + ": " + row.reason())
                .containsExactly(
                        "3: “ERR” is no temperature",
                        "5: -127.0 °C is no temperature of air: it lies outside -40 to 85",
                        "6: no temperature in this row",
                        "7: “yesterday” is no time with its date as year, month, day",
                        "8: “2026-02-30 10:40” is no time with its date as year, month, day",
                        "9: a humidity of 120.0 % lies outside 0 to 100",
                        "11: no temperature in this row",
                        "12: “2026-03-01 25:10” is no time with its date as year, month, day",
                        "13: “end of file” is no time with its date as year, month, day");
    }

    @Test
    void whatMakesNoSenseIsProposedAsNothingAndSaysWhatIsMissing() throws IOException {
        Path file = file(StandardCharsets.UTF_8, "name;colour", "Ada;green", "Bea;blue");
        ReadingMapping mapping = files.propose(file, BERLIN);
        assertThat(mapping.missing())
                .hasValueSatisfying(words -> assertThat(words).contains("time"));
        assertThat(mapping.columns()).containsOnly(NOTHING);
        assertThat(files.propose(file(StandardCharsets.UTF_8), BERLIN).missing())
                .isPresent();
    }

    @Test
    void aMappingIsComplete() {
        ReadingMapping mapping = mapping(DATE_AND_TIME, CELSIUS);
        assertThat(mapping.missing()).isEmpty();
        assertThat(mapping.with(1, HUMIDITY).missing()).contains("Say which one column holds the temperature.");
        assertThat(mapping(DATE, CELSIUS).missing()).isPresent();
        assertThat(mapping(DATE, TIME, DATE_AND_TIME, CELSIUS).missing()).isPresent();
        assertThat(mapping(DATE, TIME, FAHRENHEIT, CELSIUS).missing()).isPresent();
        assertThat(mapping(DATE, TIME, FAHRENHEIT, HUMIDITY, HUMIDITY).missing())
                .isPresent();
    }

    @Test
    void binaryRubbishAndAMissingFileAreNoCrash() throws IOException {
        SplittableRandom random = new SplittableRandom(5);
        for (int round = 0; round < 60; round++) {
            byte[] bytes = new byte[random.nextInt(3_000)];
            random.nextBytes(bytes);
            Path file = Files.write(folder.resolve("rubbish-" + round), bytes);
            ReadingMapping mapping = files.propose(file, BERLIN);
            assertThat(files.first(file, mapping, 100))
                    .allSatisfy(row -> assertThat(row.cells()).isNotNull());
        }
        assertThatThrownBy(() -> files.propose(folder.resolve("nowhere"), BERLIN))
                .isInstanceOf(DocumentException.class)
                .hasMessageContaining("DO-8");
        Path endless = Files.writeString(folder.resolve("endless"), "\"" + "x".repeat(300_000));
        assertThatThrownBy(() -> files.first(endless, mapping(DATE_AND_TIME, CELSIUS), 9))
                .isInstanceOf(DocumentException.class);
    }

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 60);
    }

    /** What is written in any of the ways is proposed and read back the same. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void anyWayOfWritingIsReadBack(long seed) throws IOException {
        SplittableRandom random = new SplittableRandom(seed);
        ZoneId zone = ZoneId.of(random.nextBoolean() ? "Europe/Berlin" : "America/Chicago");
        List<Reading> written = invented(random);
        Way way = new Way(random);
        Path file = folder.resolve("seed-" + seed);
        Files.writeString(file, way.write(written, zone), way.charset);
        ReadingMapping mapping = files.propose(file, zone);
        assertThat(mapping.missing()).as("%s", way).isEmpty();
        assertThat(readings(file, mapping)).as("%s as %s", way, mapping).isEqualTo(written);
    }

    private static List<Reading> invented(SplittableRandom random) {
        List<Reading> readings = new ArrayList<>();
        Instant at = Instant.parse("2026-01-20T00:00:00Z").plusSeconds(60L * random.nextInt(40_000));
        for (int i = 40 + random.nextInt(200); i > 0; i--) {
            at = at.plusSeconds(60L * (10 + random.nextInt(300)));
            readings.add(
                    new Reading(at, random.nextInt(1500, 3500) / 100.0, 40 + random.nextInt(600) / 10.0, Quality.GOOD));
        }
        return readings;
    }

    private Path file(Charset charset, String... lines) throws IOException {
        return Files.writeString(
                folder.resolve("file-" + Integer.toHexString(List.of(lines).hashCode())),
                String.join("\r\n", lines),
                charset);
    }

    private List<Reading> readings(Path file, ReadingMapping mapping) {
        List<Reading> readings = new ArrayList<>();
        files.each(file, mapping, (row, share) -> row.reading().ifPresent(readings::add));
        return readings;
    }

    private static Reading reading(String at, double celsius, double humidity) {
        return new Reading(Instant.parse(at), celsius, humidity, Quality.GOOD);
    }

    private static ReadingMapping mapping(ColumnMeaning... columns) {
        return new ReadingMapping(StandardCharsets.UTF_8, ';', 0, List.of(columns), DateOrder.YEAR_FIRST, BERLIN);
    }

    /** One way to write a file. */
    private static final class Way {
        private final Charset charset;
        private final String delimiter;
        private final boolean commas;
        private final boolean twoColumns;
        private final boolean header;
        private final boolean quotes;
        private final String date;

        Way(SplittableRandom random) {
            charset = List.of(
                            StandardCharsets.UTF_8,
                            StandardCharsets.UTF_16LE,
                            StandardCharsets.UTF_16BE,
                            StandardCharsets.ISO_8859_1)
                    .get(random.nextInt(4));
            delimiter = List.of(";", "\t", ",", "|").get(random.nextInt(4));
            commas = random.nextBoolean();
            twoColumns = random.nextBoolean();
            header = random.nextBoolean();
            quotes = (commas && delimiter.equals(",")) || random.nextBoolean();
            date = List.of("dd.MM.yyyy", "MM/dd/yyyy", "yyyy-MM-dd", "d/M/yyyy", "dd-MM-yy")
                    .get(random.nextInt(5));
        }

        String write(List<Reading> readings, ZoneId zone) {
            StringBuilder text = new StringBuilder();
            if (header) {
                text.append(row(
                        twoColumns
                                ? List.of("Datum", "Zeit", "T [°C]", "Feuchte %")
                                : List.of("Zeit", "T [°C]", "Feuchte %")));
            }
            for (Reading reading : readings) {
                LocalDateTime local = reading.takenAt().atZone(zone).toLocalDateTime();
                String day = DateTimeFormatter.ofPattern(date, Locale.ROOT).format(local);
                String time = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT).format(local);
                List<String> cells = new ArrayList<>(twoColumns ? List.of(day, time) : List.of(day + " " + time));
                cells.add(number(reading.temperatureCelsius()));
                cells.add(number(reading.humidityPercent()));
                text.append(row(cells));
            }
            return text.toString();
        }

        private String number(double number) {
            String written = Double.toString(number);
            return commas ? written.replace('.', ',') : written;
        }

        private String row(List<String> cells) {
            return String.join(
                            delimiter,
                            cells.stream()
                                    .map(cell -> quotes ? "\"" + cell + "\"" : cell)
                                    .toList()) + "\n";
        }

        @Override
        public String toString() {
            return "%s, '%s', commas %s, two columns %s, header %s, quotes %s, %s"
                    .formatted(charset, delimiter, commas, twoColumns, header, quotes, date);
        }
    }
}
