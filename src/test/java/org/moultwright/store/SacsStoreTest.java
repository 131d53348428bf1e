package org.moultwright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.moultwright.domain.Account;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.ContainerKind;
import org.moultwright.domain.InstantRange;
import org.moultwright.domain.RunUpEvent;
import org.moultwright.domain.Stage;
import org.moultwright.workflow.ArrangeShelf;
import org.moultwright.workflow.BeginBrood;
import org.moultwright.workflow.Deed;
import org.moultwright.workflow.MadeForecast;
import org.moultwright.workflow.OpenSac;
import org.moultwright.workflow.OpenSac.Aside;
import org.moultwright.workflow.OpenSac.SacTray;
import org.moultwright.workflow.PullSac;
import org.moultwright.workflow.ReadingSource;
import org.moultwright.workflow.UndoDeed;

/** A sac written down, taken and opened in a real store, each taken back, before and after the store was closed. */
class SacsStoreTest {
    private static final String CODE = "GP-26-A";
    private static final Instant NOW = Instant.parse("2026-05-03T20:00:00Z");
    private static final Instant LAID = NOW.minus(Duration.ofDays(30));
    private static final Instant TAKEN = NOW.minus(Duration.ofDays(2));
    private static final InstantSource CLOCK = InstantSource.fixed(NOW);

    @TempDir
    private Path folder;

    private H2Store store;

    @BeforeEach
    void open() {
        store = H2Store.open(folder.resolve("own.store"));
    }

    @AfterEach
    void close() {
        assertThat(store.check().problems()).isEmpty();
        store.close();
    }

    @Test
    void aSacIsABroodWithItsMotherAndItsPlace() {
        arrange().add("box 1", ContainerKind.BOX, Optional.empty());
        begin("Inventa pulchra", Optional.of("box 1"));
        reopen();
        BroodRecord sac = record();
        assertThat(sac.brood().taxon()).isEqualTo("Inventa pulchra");
        assertThat(sac.brood().laid()).contains(new InstantRange(LAID, LAID));
        assertThat(sac.runUp()).singleElement().satisfies(event -> {
            assertThat(event.what()).isEqualTo(RunUpEvent.MOTHER);
            assertThat(event.note()).isEqualTo("F-7");
        });
        assertThat(store.book().shelf().pathOf(CODE, LAID.plusSeconds(1))).containsExactly(CODE, "box 1");
        assertThat(sac.stays()).anyMatch(stay -> stay.container().equals(CODE));
    }

    @Test
    void aBeginningTakenBackLeavesNothingAndItsCodeIsFree() {
        begin("Inventa pulchra", Optional.empty());
        undo();
        reopen();
        assertThat(store.book().find(CODE)).isEmpty();
        assertThat(store.book().broods()).isEmpty();
        begin("Inventa altera", Optional.empty());
        assertThat(record().brood().taxon()).isEqualTo("Inventa altera");
        assertThat(record().brood().stages()).containsExactly(Stage.values());
        assertThat(record().runUp()).hasSize(1);
        assertThatThrownBy(() -> begin("Inventa tertia", Optional.empty()))
                .hasMessageContaining("There is a brood GP-26-A already");
    }

    @Test
    void whatWasForecastOfABroodTakenBackIsOfNoOtherUnderItsCode() {
        begin("Inventa pulchra", Optional.empty());
        store.forecasts().keep(forecastAt(NOW));
        assertThat(store.forecasts().of(CODE)).hasSize(1);
        undo();
        Instant nextDay = NOW.plus(Duration.ofDays(1));
        begin("Inventa altera", Optional.empty(), InstantSource.fixed(nextDay));
        assertThat(store.forecasts().of(CODE)).isEmpty();
        assertThat(store.forecasts().latest(CODE)).isEmpty();
        store.forecasts().keep(forecastAt(nextDay));
        reopen();
        assertThat(store.forecasts().of(CODE)).extracting(MadeForecast::asOf).containsExactly(nextDay);
        assertThat(store.forecasts().latest(CODE)).isPresent();
    }

    private static MadeForecast forecastAt(Instant asOf) {
        return new MadeForecast(UUID.randomUUID(), CODE, asOf, "GENERAL", 0, 0, List.of());
    }

    @Test
    void aFolderThatTellsOfItKeepsItWhateverIsTakenBack() {
        begin("Inventa pulchra", Optional.empty());
        BroodRecord told = record();
        store.book().takeIn(told, ReadingSource.of(told));
        undo();
        assertThat(store.book().find(CODE)).isPresent();
    }

    @Test
    void takingAndOpeningAreTakenBackOneByOne() {
        arrange().add("box 1", ContainerKind.BOX, Optional.empty());
        begin("Inventa pulchra", Optional.of("box 1"));
        pull().pull(CODE, TAKEN, Optional.empty());
        assertThat(record().brood().pulled()).contains(TAKEN);
        open(Map.of(Stage.POSTEMBRYO, 20), Map.of(Aside.INFERTILE, 3, Aside.FUSED, 2, Aside.MOULDY, 1));
        reopen();
        assertThat(record().ledger().opened()).isEqualTo(26);
        assertThat(record().ledger().balance(Account.tray("A1"))).isEqualTo(20);
        assertThat(record().ledger().balance(Account.DEAD)).isEqualTo(3);
        assertThat(store.book().shelf().pathOf("A1", NOW)).containsExactly("A1", "box 1");
        assertThat(store.book().shelf().stayOf(CODE, NOW)).isEmpty();
        undo();
        assertThat(record().ledger().opened()).isZero();
        assertThat(record().checks()).isEmpty();
        assertThat(store.book().shelf().stayOf("A1", NOW)).isEmpty();
        assertThat(store.book().shelf().stayOf(CODE, NOW)).isPresent();
        assertThat(record().brood().pulled()).contains(TAKEN);
        undo();
        assertThat(record().brood().pulled()).isEmpty();
    }

    @Test
    void openingASacThatWasWithItsMotherTakesItFromHer() {
        begin("Inventa pulchra", Optional.empty());
        open(Map.of(Stage.EGG, 5), Map.of());
        assertThat(record().brood().pulled()).contains(NOW);
        assertThatThrownBy(() -> open(Map.of(Stage.EGG, 5), Map.of())).hasMessageContaining("opened already");
        assertThatThrownBy(() -> pull().pull(CODE, TAKEN, Optional.empty())).hasMessageContaining("opened already");
    }

    @Test
    void aBeginningIsNotTakenBackWhileSomethingIsWrittenOfItsBrood() {
        Deed.Summary begun = begin("Inventa pulchra", Optional.empty());
        Deed.Summary taken = pull().pull(CODE, TAKEN, Optional.empty());
        UndoDeed undo = new UndoDeed(store.book(), CLOCK, UUID::randomUUID);
        assertThatThrownBy(() -> undo.undo(begun.id()))
                .hasMessage("'GP-26-A taken from its mother' was written later and rests on it. Take that back first.");
        assertThat(store.book().find(CODE)).isPresent();
        undo.undo(taken.id());
        undo.undo(begun.id());
        assertThat(store.book().find(CODE)).isEmpty();
    }

    @Test
    void aSacIsNotTakenBeforeItWasLaidNorAheadOfNow() {
        begin("Inventa pulchra", Optional.empty());
        assertThatThrownBy(() -> pull().pull(CODE, LAID.minusSeconds(1), Optional.empty()))
                .hasMessage("That is before the sac was laid.");
        assertThatThrownBy(() -> pull().pull(CODE, NOW.plusSeconds(1), Optional.empty()))
                .hasMessageContaining("yet to come");
    }

    private Deed.Summary begin(String taxon, Optional<String> inside) {
        return begin(taxon, inside, CLOCK);
    }

    private Deed.Summary begin(String taxon, Optional<String> inside, InstantSource clock) {
        return new BeginBrood(store.book(), clock, UUID::randomUUID)
                .begin(new BeginBrood.Sac(
                        CODE,
                        taxon,
                        ZoneOffset.UTC,
                        "F-7",
                        Optional.of(new InstantRange(LAID, LAID)),
                        Optional.empty(),
                        inside));
    }

    private void open(Map<Stage, Integer> counts, Map<Aside, Integer> aside) {
        new OpenSac(store.book(), CLOCK, UUID::randomUUID)
                .open(new OpenSac.Opening(
                        CODE, List.of(new SacTray("A1", counts)), aside, Optional.empty(), Optional.of("box 1")));
    }

    private PullSac pull() {
        return new PullSac(store.book(), CLOCK, UUID::randomUUID);
    }

    private ArrangeShelf arrange() {
        return new ArrangeShelf(store.book(), CLOCK, UUID::randomUUID);
    }

    private void undo() {
        new UndoDeed(store.book(), CLOCK, UUID::randomUUID).undo();
    }

    private BroodRecord record() {
        return store.book().find(CODE).orElseThrow();
    }

    private void reopen() {
        store.close();
        open();
    }
}
