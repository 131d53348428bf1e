package org.moultwright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.moultwright.compute.agreement.DisplayCheck;
import org.moultwright.compute.calibration.CalibratedStays;
import org.moultwright.compute.calibration.KnownPoints;
import org.moultwright.compute.calibration.Redressing;
import org.moultwright.compute.calibration.SaturatedSalt;
import org.moultwright.compute.climate.LivedTemperature;
import org.moultwright.compute.climate.WarmDays;
import org.moultwright.compute.history.Story;
import org.moultwright.compute.history.StoryEvent;
import org.moultwright.compute.rate.RateCurves;
import org.moultwright.domain.Brood;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.Calibration;
import org.moultwright.domain.CalibrationMethod;
import org.moultwright.domain.CalibrationPoint;
import org.moultwright.domain.Correction;
import org.moultwright.domain.DisplayNote;
import org.moultwright.domain.InstantRange;
import org.moultwright.domain.ProbeStay;
import org.moultwright.domain.Quality;
import org.moultwright.domain.Reading;
import org.moultwright.domain.Span;
import org.moultwright.domain.Stage;
import org.moultwright.workflow.BroodBook;
import org.moultwright.workflow.CalibratedBook;
import org.moultwright.workflow.Deed;
import org.moultwright.workflow.NoteDisplay;
import org.moultwright.workflow.ReadingLog.Logged;
import org.moultwright.workflow.ReadingSource;
import org.moultwright.workflow.RecordCalibration;
import org.moultwright.workflow.UndoDeed;

class InstrumentsStoreTest {
    private static final Instant LAID = Instant.parse("2026-03-01T00:00:00Z");
    private static final Instant NOW = LAID.plus(Duration.ofDays(10));
    private static final String BROOD = "CC-26-A";

    @TempDir
    Path folder;

    private final InstantSource clock = InstantSource.fixed(NOW);
    private H2Store store;

    @BeforeEach
    void fill() {
        store = H2Store.open(folder.resolve("room.store"));
        BroodRecord record = record();
        store.book().takeIn(record, ReadingSource.of(record));
        List<Logged> hourly = new ArrayList<>();
        for (int hour = 0; hour < 240; hour++) {
            Instant at = LAID.plus(Duration.ofHours(hour));
            hourly.add(new Logged(new Reading(at, 27, Double.NaN, Quality.GOOD), ""));
        }
        store.readings().append("P1", hourly);
    }

    @AfterEach
    void close() {
        store.close();
    }

    @Test
    void aCalibrationComesBackAsItWasAndStaysUndoneOnceUndone() {
        Calibration ice = save(0.4, LAID);
        Calibration salts = recording()
                .draft(new RecordCalibration.Sheet(
                        "P1",
                        CalibrationMethod.SATURATED_SALTS,
                        NOW,
                        LAID,
                        RecordCalibration.USUAL_LIFE,
                        List.of(
                                KnownPoints.salt(SaturatedSalt.SODIUM_CHLORIDE, 25, 77, 0.3),
                                KnownPoints.salt(SaturatedSalt.MAGNESIUM_CHLORIDE, 25, 35.1, 0.3)),
                        "over night"));
        recording().save(salts);
        reopen();
        assertThat(store.climate().calibrations()).containsExactly(ice, salts);
        assertThat(store.climate().calibrations().get(1).points().get(0).source())
                .isEqualTo("OIML R 121:1996, NaCl at 25.0 °C");

        assertThat(undo()).hasValueSatisfying(summary -> {
            assertThat(summary.words()).isEqualTo("P1 calibrated");
            assertThat(summary.brood()).isEmpty();
        });
        reopen();
        assertThat(store.climate().calibrations()).containsExactly(ice);
        undo();
        assertThat(store.climate().calibrations()).isEmpty();
        assertThat(undo()).isEmpty();
        assertThat(store.check().problems()).isEmpty();
    }

    @Test
    void aLaterCalibrationGivesThePastItsOwnTemperatures() {
        double before = warmDays();
        double sdBefore = sd();
        save(1.0, LAID);
        double corrected = warmDays();

        assertThat(corrected).isLessThan(before);
        assertThat(calibrated().find(BROOD).orElseThrow().until(NOW).probeStays())
                .singleElement()
                .satisfies(stay -> assertThat(stay.airCelsius(27)).isCloseTo(26, within(1e-12)));
        assertThat(sd()).isLessThan(sdBefore);
        assertThat(store.readings().series("P1", LAID, NOW).temperatureCelsius(0))
                .isEqualTo(27);
        assertThat(store.book().find(BROOD).orElseThrow().probeStays()).isEqualTo(record().probeStays());

        undo();
        assertThat(warmDays()).isEqualTo(before);
    }

    @Test
    void theStoryAndTheAuditTellOfIt() {
        Calibration first = save(0.3, LAID);
        RecordCalibration.Sheet sheet = sheet(0.8, LAID.plus(Duration.ofDays(5)));
        Redressing change = recording().changes(recording().draft(sheet), Correction.constant(0, 0.5));
        recording().save(recording().draft(sheet));

        assertThat(change.readings()).isEqualTo(120);
        assertThat(change.first()).contains(LAID.plus(Duration.ofDays(5)));
        assertThat(change.meanChange()).isCloseTo(-0.5, within(1e-9));
        assertThat(Story.of(calibrated().find(BROOD).orElseThrow()))
                .filteredOn(event -> event instanceof StoryEvent.Calibrated)
                .first()
                .satisfies(event -> {
                    StoryEvent.Calibrated told = (StoryEvent.Calibrated) event;
                    assertThat(told.at()).isEqualTo(first.doneAt());
                    assertThat(told.tooHighCelsius()).isCloseTo(0.3, within(1e-9));
                    assertThat(told.since()).isEqualTo(LAID);
                });
    }

    @Test
    void aDisplayIsKeptJudgedAndUndone() {
        save(0.4, LAID);
        NoteDisplay noting = new NoteDisplay(store.book(), store.readings(), clock, UUID::randomUUID);
        DisplayNote note = noting.save("A1", 28.4, 0.1, "");
        reopen();
        NoteDisplay reading = new NoteDisplay(store.book(), store.readings(), clock, UUID::randomUUID);
        List<ProbeStay> stays = new CalibratedStays(store.climate().calibrations()).dress(record().probeStays());

        assertThat(store.climate().displays()).containsExactly(note);
        // The last reading is an hour old, which is too long ago to judge by.
        assertThat(reading.check(note, stays, 0.1)).isEmpty();
        store.readings()
                .append("P1", List.of(new Logged(new Reading(NOW.minusSeconds(60), 27, Double.NaN, Quality.GOOD), "")));
        DisplayCheck check = reading.check(note, stays, 0.1).orElseThrow();
        assertThat(check.probeCelsius()).isCloseTo(26.6, within(1e-9));
        assertThat(check.verdict(0.5, 2)).isEqualTo(DisplayCheck.Verdict.DISAGREES);
        assertThat(reading.check(note, List.of(), 0.1)).isEmpty();

        undo();
        assertThat(store.climate().displays()).isEmpty();
    }

    @Test
    void aDeedIsAboutABroodOrAboutTheRoom() {
        Calibration ice = recording().draft(sheet(0.4, LAID));
        Deed.Summary ofBrood = new Deed.Summary(UUID.randomUUID(), BROOD, NOW, "both");

        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Deed(ofBrood, Optional.empty(), Deed.Content.ofRoom(List.of(ice), List.of())));
    }

    private Calibration save(double tooHigh, Instant appliesFrom) {
        Calibration draft = recording().draft(sheet(tooHigh, appliesFrom));
        recording().save(draft);
        return draft;
    }

    private static RecordCalibration.Sheet sheet(double tooHigh, Instant appliesFrom) {
        List<CalibrationPoint> points = List.of(
                KnownPoints.ice(tooHigh, 0.02),
                new CalibrationPoint(30, 0.1, 30 + tooHigh, 0.02, "clinical thermometer in a bath"));
        return new RecordCalibration.Sheet(
                "P1",
                CalibrationMethod.TWO_POINTS,
                NOW.minusSeconds(600),
                appliesFrom,
                RecordCalibration.USUAL_LIFE,
                points,
                "");
    }

    private RecordCalibration recording() {
        return new RecordCalibration(store.book(), store.climate(), store.readings(), clock, UUID::randomUUID);
    }

    private BroodBook calibrated() {
        return new CalibratedBook(store.book(), store.climate());
    }

    private WarmDays lived() {
        BroodRecord found = calibrated().find(BROOD).orElseThrow();
        BroodRecord whole = found.withReadings(store.readings().of(found, NOW).gathered());
        return WarmDays.of(
                LivedTemperature.of(whole, "A1", NOW), RateCurves.linear(1, 15).relativeTo(27));
    }

    private double warmDays() {
        return lived().total();
    }

    private double sd() {
        return lived().sd(LAID, NOW);
    }

    private Optional<Deed.Summary> undo() {
        return new UndoDeed(calibrated(), clock, UUID::randomUUID).undo();
    }

    private void reopen() {
        store.close();
        store = H2Store.open(folder.resolve("room.store"));
    }

    private static BroodRecord record() {
        Brood brood = new Brood(
                BROOD,
                "Chromatopelma cyaneopubescens",
                ZoneOffset.UTC,
                Optional.of(new InstantRange(LAID, LAID)),
                Optional.empty(),
                List.of(Stage.values()),
                27,
                Optional.empty());
        Span always = new Span(LAID, Optional.empty());
        return BroodRecord.of(brood).withProbeStays(List.of(new ProbeStay("P1", "A1", always, 0, 0.5)));
    }
}
