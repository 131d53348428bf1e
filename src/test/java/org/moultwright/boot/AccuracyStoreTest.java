package org.moultwright.boot;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.moultwright.boot.command.Commands;
import org.moultwright.compute.forecast.BroodForecast;
import org.moultwright.compute.forecast.Forecaster;
import org.moultwright.compute.forecast.PriorSource;
import org.moultwright.domain.Stage;
import org.moultwright.exchange.PlainBroodFolders;
import org.moultwright.exchange.TimingsFile;
import org.moultwright.store.H2Store;
import org.moultwright.workflow.KeptForecasts;
import org.moultwright.workflow.MadeForecast;
import org.moultwright.workflow.Room;
import org.moultwright.workflow.ScoreForecasts;
import org.moultwright.workflow.TakeInFolders;

/** Forecasts of the demo's first brood, made evening by evening, kept in a real store, and scored at its end. */
class AccuracyStoreTest {
    private static final Instant UNOPENED = Instant.parse("2026-03-15T20:00:00Z");
    private static final Instant OPENED = Instant.parse("2026-03-25T20:00:00Z");
    private static final Instant FIRST = Instant.parse("2026-04-09T20:00:00Z");
    private static final Instant LAST = Instant.parse("2026-05-03T20:00:00Z");
    private static final Instant END = Instant.parse("2026-06-20T20:00:00Z");

    @TempDir
    Path folder;

    private Path file;

    @BeforeEach
    void takeIn() {
        file = folder.resolve("room.store");
        try (H2Store store = H2Store.open(file)) {
            new TakeInFolders(new PlainBroodFolders(), store.book()).takeIn(Path.of("demo-data/cc-26-a"));
        }
    }

    @Test
    void forecastsMadeOnTheWayAreScoredWhenTheBroodIsOver() throws IOException {
        try (H2Store store = H2Store.open(file)) {
            Room room = room(store);
            for (Instant evening = FIRST; !evening.isAfter(LAST); evening = evening.plus(Duration.ofDays(3))) {
                room.at(evening);
                room.at(evening.plusSeconds(60));
            }
        }
        List<String> lines = accuracy("--json");
        assertThat(lines).hasSize(3);
        JsonNode half = new ObjectMapper().readTree(lines.get(1));
        assertThat(half.at("/milestone").asText()).isEqualTo("half");
        assertThat(half.at("/count").asInt()).isGreaterThan(20);
        assertThat(half.at("/meanAbsoluteErrorDays").asDouble()).isBetween(0.1, 6.0);
        assertThat(half.at("/pit")).hasSize(10);
        String tenths = half.at("/pit").toString().replaceAll("[\\[\\]]", "").replace(',', ' ');
        assertThat(accuracy().get(1))
                .startsWith("half ")
                .contains("days off", "late on average", "CRPS", "within the 80 % interval")
                .endsWith("by tenths of their probability: " + tenths);
    }

    private List<String> accuracy(String... more) {
        StringWriter out = new StringWriter();
        List<String> arguments = new ArrayList<>(List.of("accuracy", "--store", file.toString()));
        arguments.addAll(List.of(more));
        int code = Commands.run(
                new OpenWorkbench((fault, opening) -> {}),
                new PrintWriter(out),
                new PrintWriter(out),
                arguments.toArray(String[]::new));
        assertThat(code).as(out.toString()).isZero();
        return out.toString().lines().toList();
    }

    @Test
    void whatWasSaidOfAnUnopenedSacIsKeptAndHeldAgainstItsTrays() {
        try (H2Store store = H2Store.open(file)) {
            room(store).at(UNOPENED);
            List<MadeForecast.Event> said =
                    store.forecasts().of("CC-26-A").get(0).events();
            assertThat(said).isNotEmpty().allMatch(event -> event.milestone().equals("half"));
            ScoreForecasts scores = new ScoreForecasts(
                    store.book(), store.readings(), store.forecasts(), new Forecaster(TimingsFile.shipped())::forecast);
            List<ScoreForecasts.Scored> scored = scores.byEvent();
            assertThat(scored).extracting(ScoreForecasts.Scored::into).contains(Stage.INSTAR1, Stage.INSTAR2);
            assertThat(scored)
                    .allSatisfy(event -> assertThat(event.outcomes()).hasSize(1).allSatisfy(outcome -> {
                        assertThat(outcome.truth()).isAfter(OPENED);
                        assertThat(outcome.forecast().chanceBy(outcome.truth())).isBetween(0.02, 0.98);
                    }));
        }
    }

    @Test
    void anEveningWithoutALookIsKeptOnce() {
        try (H2Store store = H2Store.open(file)) {
            Room room = room(store);
            room.at(LAST);
            room.at(LAST.plus(Duration.ofMinutes(20)));
            assertThat(store.forecasts().of("CC-26-A")).hasSize(1);
            room.at(LAST.plus(Duration.ofHours(30)));
        }
        try (H2Store store = H2Store.open(file)) {
            List<MadeForecast> made = store.forecasts().of("CC-26-A");
            assertThat(made).hasSize(2);
            assertThat(store.forecasts().latest("CC-26-A")).contains(made.get(1));
            assertThat(made.get(0).events().get(0).twentieths()).hasSize(21).isSorted();
        }
    }

    @Test
    void aCompletedBroodTeachesTheNextOfItsSpecies() {
        try (H2Store store = H2Store.open(file)) {
            new TakeInFolders(new PlainBroodFolders(), store.book()).takeIn(Path.of("demo-data/cc-26-c"));
            Room room = room(store);
            BroodForecast before =
                    room.at(LAST).brood("CC-26-C").orElseThrow().forecast().orElseThrow();
            assertThat(before.priorFrom()).isEqualTo(PriorSource.FOLDER);
            BroodForecast after =
                    room.at(END).brood("CC-26-C").orElseThrow().forecast().orElseThrow();
            assertThat(after.priorFrom()).isEqualTo(PriorSource.LEARNED);
            assertThat(after.learnedBroods()).isEqualTo(1);
        }
    }

    private static Room room(H2Store store) {
        return new Room(
                store.book(),
                store.readings(),
                new KeptForecasts(new Forecaster(TimingsFile.shipped())::forecast, store.forecasts()));
    }
}
