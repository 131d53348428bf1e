package org.moultwright.ui.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.moultwright.domain.Quality;
import org.moultwright.domain.ReadingSeries;
import org.moultwright.domain.RollUps;

class ReadingPyramidTest {
    private static final Instant FROM = Instant.parse("2026-04-01T00:00:00Z");
    private static final Duration BRIDGED = Duration.ofMinutes(30);

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 5, 8, 13})
    void theRangeOfAnyStretchIsThatOfItsReadings(long seed) {
        Random random = new Random(seed);
        ReadingSeries readings = walk(random, 20_000);
        ReadingPyramid pyramid = ReadingPyramid.of(RollUps.each(readings), BRIDGED, FROM);
        for (int i = 0; i < 200; i++) {
            Instant from = FROM.plusSeconds(random.nextInt(20_000 * 60));
            Instant to = from.plusSeconds(1 + random.nextInt(15_000 * 60));
            double[] inside = IntStream.range(0, readings.size())
                    .filter(at -> readings.quality(at) == Quality.GOOD
                            && readings.epochMillis(at) >= from.toEpochMilli()
                            && readings.epochMillis(at) <= to.toEpochMilli())
                    .mapToDouble(readings::temperatureCelsius)
                    .sorted()
                    .toArray();
            if (inside.length == 0) {
                assertThat(pyramid.range(from, to)).isEmpty();
            } else {
                assertThat(pyramid.range(from, to))
                        .contains(new ReadingPyramid.Range(inside[0], inside[inside.length - 1], inside.length));
            }
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 5, 8, 13})
    void noSpikeIsLostHoweverLongTheTimeAndItIsWhereItWas(long seed) {
        Random random = new Random(seed);
        ReadingSeries.Builder builder = new ReadingSeries.Builder();
        int spike = random.nextInt(200_000);
        for (int i = 0; i < 200_000; i++) {
            builder.add(FROM.toEpochMilli() + 60_000L * i, i == spike ? 40 : 27, Double.NaN, Quality.GOOD);
        }
        CalendarAxis axis = new CalendarAxis(ZoneOffset.UTC, FROM, FROM.plus(Duration.ofMinutes(200_000)), 0, 300);
        Envelope envelope =
                ReadingPyramid.of(RollUps.each(builder.build()), BRIDGED, FROM).envelope(axis);
        List<Envelope.Column> high = envelope.columns().stream()
                .filter(column -> column.high() == 40)
                .toList();
        assertThat(high).hasSize(1);
        assertThat((double) high.get(0).pixel()).isCloseTo(axis.x(FROM.plus(Duration.ofMinutes(spike))), within(1.6));
    }

    @Test
    void groupsNeverReachOverASilence() {
        ReadingSeries.Builder builder = new ReadingSeries.Builder();
        for (int i = 0; i < 50_000; i++) {
            long night = i >= 25_003 ? Duration.ofDays(2).toMillis() : 0;
            builder.add(FROM.toEpochMilli() + 60_000L * i + night, i < 25_003 ? 26 : 28, Double.NaN, Quality.GOOD);
        }
        CalendarAxis axis = new CalendarAxis(ZoneOffset.UTC, FROM, FROM.plus(Duration.ofDays(37)), 0, 500);
        Envelope envelope =
                ReadingPyramid.of(RollUps.each(builder.build()), BRIDGED, FROM).envelope(axis);
        assertThat(envelope.gaps()).hasSize(1);
        assertThat(envelope.columns()).allMatch(column -> column.low() == column.high());
        assertThat(envelope.columns()).filteredOn(Envelope.Column::afterGap).hasSize(1);
    }

    @Test
    void aSilenceUpToNowIsAGap() {
        ReadingSeries.Builder builder = new ReadingSeries.Builder();
        builder.add(FROM.toEpochMilli(), 27, Double.NaN, Quality.GOOD);
        CalendarAxis axis = new CalendarAxis(ZoneOffset.UTC, FROM, FROM.plus(Duration.ofHours(2)), 0, 500);
        Instant now = FROM.plus(Duration.ofHours(1));
        assertThat(ReadingPyramid.of(RollUps.each(builder.build()), BRIDGED, now)
                        .envelope(axis)
                        .gaps())
                .containsExactly(new Envelope.Gap(FROM.toEpochMilli(), now.toEpochMilli()));
    }

    private static ReadingSeries walk(Random random, int minutes) {
        ReadingSeries.Builder builder = new ReadingSeries.Builder();
        double value = 27;
        for (int minute = 0; minute < minutes; minute++) {
            value += random.nextGaussian() * 0.1;
            boolean isSilent = minute / 500 % 9 == 4;
            if (!isSilent) {
                Quality quality = random.nextInt(50) == 0 ? Quality.FAULT : Quality.GOOD;
                builder.add(FROM.toEpochMilli() + 60_000L * minute, value, Double.NaN, quality);
            }
        }
        return builder.build();
    }
}
