package org.moultwright.domain;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RollUpsTest {
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void coarserOnesFromFinerOnesAreThoseOfTheReadings(long seed) {
        ReadingSeries readings = readings(new SplittableRandom(seed));
        List<RollUp> finer = RollUps.each(readings);
        for (RollUpLevel level : RollUpLevel.values()) {
            finer = RollUps.coarser(finer, level);
            assertThat(finer).as("%s, seed %d", level, seed).isEqualTo(RollUps.of(readings, level));
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void joinedInAnyOrderTheyAreThoseOfTheWhole(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        ReadingSeries whole = readings(random);
        ReadingSeries.Builder some = new ReadingSeries.Builder();
        ReadingSeries.Builder others = new ReadingSeries.Builder();
        whole.forEach(reading -> (random.nextBoolean() ? some : others).add(reading));
        for (RollUpLevel level : RollUpLevel.values()) {
            List<RollUp> joined = RollUps.joined(RollUps.of(some.build(), level), RollUps.of(others.build(), level));
            assertThat(joined).as("%s, seed %d", level, seed).isEqualTo(RollUps.of(whole, level));
        }
    }

    @Test
    void theyTellLowestHighestFirstLastMeanAndWhatWasBad() {
        ReadingSeries readings = new ReadingSeries.Builder()
                .add(60_000, Double.NaN, Double.NaN, Quality.FAULT)
                .add(61_000, 26.0, 70, Quality.GOOD)
                .add(62_000, 99.0, 70, Quality.SUSPECT)
                .add(63_000, 25.0, 70, Quality.GOOD)
                .add(64_000, 25.5, 70, Quality.GOOD)
                .build();
        RollUp minute = RollUps.of(readings, RollUpLevel.MINUTE).get(0);
        assertThat(minute).isEqualTo(new RollUp(60_000, 3, 2, 61_000, 26.0, 64_000, 25.5, 25.0, 26.0, 76_500_000));
        assertThat(minute.meanCelsius()).isEqualTo(25.5);
        assertThat(minute.corrected(Correction.constant(-0.5, 0)).lowCelsius()).isEqualTo(24.5);
        assertThat(minute.corrected(Correction.constant(-0.5, 0)).meanCelsius()).isEqualTo(25.0);
    }

    @Test
    void theCoarsestLevelWithEnoughIsChosen() {
        assertThat(RollUpLevel.coarsest(Duration.ofDays(1), 1600)).isEmpty();
        assertThat(RollUpLevel.coarsest(Duration.ofMinutes(1600), 1600)).contains(RollUpLevel.MINUTE);
        assertThat(RollUpLevel.coarsest(Duration.ofDays(60), 1600)).contains(RollUpLevel.QUARTER_HOUR);
        assertThat(RollUpLevel.coarsest(Duration.ofDays(365), 1600)).contains(RollUpLevel.HOUR);
        assertThat(RollUpLevel.coarsest(Duration.ofDays(1825), 1600)).contains(RollUpLevel.DAY);
    }

    private static ReadingSeries readings(SplittableRandom random) {
        ReadingSeries.Builder readings = new ReadingSeries.Builder();
        long millis = random.nextLong(-100_000_000_000L, 2_000_000_000_000L);
        List<Quality> qualities = new ArrayList<>(List.of(Quality.values()));
        for (int i = 0; i < 3000; i++) {
            millis += 1 + random.nextInt(random.nextInt(50) == 0 ? 9_000_000 : 40_000);
            Quality quality = random.nextInt(4) > 0 ? Quality.GOOD : qualities.get(random.nextInt(3));
            readings.add(millis, random.nextInt(-400, 850) / 10.0, Double.NaN, quality);
        }
        return readings.build();
    }
}
