package org.moultwright.device.quality;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.moultwright.device.profile.Decoded;
import org.moultwright.device.profile.FaultCause;
import org.moultwright.device.profile.Limits;
import org.moultwright.domain.Quality;
import org.moultwright.domain.Reading;

/** 85 °C as a power-on value and -127 °C as a broken wire: one-wire sensor data sheet and its common drivers. */
class ReadingJudgeTest {
    private static final Duration PERIOD = Duration.ofSeconds(10);

    private final ReadingJudge judge = new ReadingJudge(new Limits(-40, 85, -127, 85), Optional.empty());
    private Instant now = Instant.parse("2026-03-01T20:00:00Z");

    @Test
    void aFirstValueIsGood() {
        assertThat(qualityOf(26.1)).isEqualTo(Quality.GOOD);
    }

    @Test
    void aJumpIsSuspectUntilTheNextValueConfirmsIt() {
        qualityOf(20.0);
        assertThat(qualityOf(27.0)).isEqualTo(Quality.SUSPECT);
        assertThat(qualityOf(27.1)).isEqualTo(Quality.GOOD);
    }

    @Test
    void aSpikeStaysSuspectAndTheOldLevelGood() {
        qualityOf(26.0);
        assertThat(qualityOf(-12.5)).isEqualTo(Quality.SUSPECT);
        assertThat(qualityOf(26.1)).isEqualTo(Quality.GOOD);
        assertThat(qualityOf(-12.5)).isEqualTo(Quality.SUSPECT);
    }

    @Test
    void exactlyFiveKelvinIsNoJump() {
        qualityOf(20.0);
        assertThat(qualityOf(25.0)).isEqualTo(Quality.GOOD);
    }

    @Test
    void afterALongGapAnyLevelIsGood() {
        qualityOf(20.0);
        now = now.plus(Duration.ofHours(1));
        assertThat(qualityOf(28.0)).isEqualTo(Quality.GOOD);
    }

    @Test
    void aPowerOnValueIsAFaultAfterAJump() {
        qualityOf(26.0);
        assertThat(qualityOf(85.0)).isEqualTo(Quality.FAULT);
        assertThat(qualityOf(85.0)).isEqualTo(Quality.FAULT);
        now = now.plus(Duration.ofHours(1));
        assertThat(qualityOf(85.0)).isEqualTo(Quality.FAULT);
        assertThat(qualityOf(26.1)).isEqualTo(Quality.GOOD);
    }

    @Test
    void aPowerOnValueAtTheStartIsSuspectAndConfirmsNothing() {
        assertThat(qualityOf(85.0)).isEqualTo(Quality.SUSPECT);
        assertThat(qualityOf(85.0)).isEqualTo(Quality.SUSPECT);
        assertThat(qualityOf(26.1)).isEqualTo(Quality.GOOD);
    }

    @Test
    void aLegalEightyFiveIsGood() {
        qualityOf(82.0);
        assertThat(qualityOf(85.0)).isEqualTo(Quality.GOOD);
    }

    @Test
    void impossibleHumidityIsLeftOutAndMakesTheReadingSuspect() {
        Reading reading = judge.judge(new Decoded.Measured(26.0, 250), now);
        assertThat(reading).isEqualTo(new Reading(now, 26.0, Double.NaN, Quality.SUSPECT));
    }

    @Test
    void whatIsNoMeasurementIsAFaultWithoutANumber() {
        Reading fault = new Reading(now, Double.NaN, Double.NaN, Quality.FAULT);
        assertThat(judge.judge(new Decoded.Fault(FaultCause.INSTRUMENT), now)).isEqualTo(fault);
        assertThat(judge.judge(new Decoded.Unreadable(), now)).isEqualTo(fault);
    }

    @Test
    void whatWasHeldUpIsSuspectAndIsNotCompared() {
        qualityOf(26.0);
        assertThat(judge.judgeHeldUp(new Decoded.Measured(33.0, Double.NaN), now)
                        .quality())
                .isEqualTo(Quality.SUSPECT);
        assertThat(qualityOf(33.0)).isEqualTo(Quality.SUSPECT);
    }

    private Quality qualityOf(double celsius) {
        now = now.plus(PERIOD);
        return judge.judge(new Decoded.Measured(celsius, Double.NaN), now).quality();
    }
}
