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
import org.moultwright.domain.RollUpLevel;
import org.moultwright.domain.RollUps;

class EnvelopeTest {
    private static final Instant FROM = Instant.parse("2026-04-01T00:00:00Z");
    private static final Duration BRIDGED = Duration.ofMinutes(30);

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 5, 8, 13, 21, 34})
    void everyColumnKeepsLowestHighestFirstAndLast(long seed) {
        Random random = new Random(seed);
        int width = 20 + random.nextInt(300);
        CalendarAxis axis = new CalendarAxis(ZoneOffset.UTC, FROM, FROM.plus(Duration.ofDays(3)), 0, width);
        ReadingSeries readings = walk(random, axis);
        Envelope envelope = ReadingPyramid.of(RollUps.each(readings), Duration.ofDays(9), FROM)
                .envelope(axis);
        for (Envelope.Column column : envelope.columns()) {
            List<Double> values = valuesAt(readings, axis, column.pixel());
            assertThat(column.first()).as("first, seed %d", seed).isEqualTo(values.get(0));
            assertThat(column.last()).as("last, seed %d", seed).isEqualTo(values.get(values.size() - 1));
            assertThat(column.low())
                    .isEqualTo(values.stream().min(Double::compare).orElseThrow());
            assertThat(column.high())
                    .isEqualTo(values.stream().max(Double::compare).orElseThrow());
        }
        assertThat(envelope.columns())
                .extracting(Envelope.Column::pixel)
                .isSorted()
                .doesNotHaveDuplicates();
    }

    @Test
    void aSilenceIsAGapAndNothingBridgesIt() {
        CalendarAxis axis = new CalendarAxis(ZoneOffset.UTC, FROM, FROM.plus(Duration.ofHours(10)), 0, 100);
        ReadingSeries readings = series(0, 27, Quality.GOOD, 10, 27.5, Quality.GOOD, 200, 26, Quality.GOOD);
        Envelope envelope =
                ReadingPyramid.of(RollUps.each(readings), BRIDGED, FROM).envelope(axis);
        assertThat(envelope.gaps()).containsExactly(new Envelope.Gap(at(10).toEpochMilli(), at(200).toEpochMilli()));
        assertThat(envelope.columns()).extracting(Envelope.Column::afterGap).containsExactly(false, false, true);
    }

    /** So that words need not stand over a line. */
    @Test
    void whereATraceRunsIsKnown() {
        CalendarAxis axis = new CalendarAxis(ZoneOffset.UTC, FROM, FROM.plus(Duration.ofMinutes(100)), 0, 100);
        ReadingSeries readings = series(10, 27, Quality.GOOD, 12, 29, Quality.GOOD);
        Envelope envelope =
                ReadingPyramid.of(RollUps.each(readings), BRIDGED, FROM).envelope(axis);
        assertThat(envelope.reaches(0, 100, 26, 27.5)).isTrue();
        assertThat(envelope.reaches(11, 100, 26, 27.5)).isFalse();
        assertThat(envelope.reaches(0, 100, 27.5, 28.5)).isFalse();
        ValueAxis celsius = new ValueAxis(20, 30, 5, 105);
        assertThat(celsius.value(celsius.y(27))).isEqualTo(27, within(1e-9));
    }

    @Test
    void faultsAreNoReadings() {
        CalendarAxis axis = new CalendarAxis(ZoneOffset.UTC, FROM, FROM.plus(Duration.ofHours(10)), 0, 100);
        ReadingSeries readings = series(0, 27, Quality.GOOD, 10, 85, Quality.FAULT, 20, 27, Quality.GOOD);
        assertThat(ReadingPyramid.of(RollUps.each(readings), BRIDGED, FROM)
                        .envelope(axis)
                        .columns())
                .allMatch(column -> column.high() == 27)
                .hasSize(2);
    }

    @Test
    void aRollUpWiderThanAPixelFillsEachItReachesIntoAndCountsOnce() {
        CalendarAxis axis = new CalendarAxis(ZoneOffset.UTC, at(-2), at(598), 0, 40);
        ReadingSeries.Builder builder = new ReadingSeries.Builder();
        for (int minute = 0; minute < 180; minute++) {
            builder.add(at(minute).toEpochMilli(), minute < 60 ? 27 : minute == 90 ? 30 : 28, Double.NaN, Quality.GOOD);
        }
        ReadingPyramid pyramid =
                ReadingPyramid.of(RollUps.of(builder.build(), RollUpLevel.HOUR), Duration.ofHours(1), at(180));
        List<Envelope.Column> columns = pyramid.envelope(axis).columns();
        assertThat(columns)
                .extracting(Envelope.Column::pixel)
                .containsExactly(0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12);
        assertThat(columns)
                .extracting(Envelope.Column::high)
                .containsExactly(27.0, 27.0, 27.0, 27.0, 30.0, 30.0, 30.0, 30.0, 30.0, 28.0, 28.0, 28.0, 28.0);
        assertThat(columns.get(5).mean()).isCloseTo(28 + 2 / 60.0, within(1e-6));
        assertThat(pyramid.range(FROM, at(600))).contains(new ReadingPyramid.Range(27, 30, 180));
        assertThat(pyramid.range(at(61), at(100))).contains(new ReadingPyramid.Range(28, 30, 60));
        assertThat(pyramid.range(at(30), at(100))).contains(new ReadingPyramid.Range(27, 30, 120));
        assertThat(pyramid.range(at(200), at(300))).isEmpty();
    }

    private static ReadingSeries series(Object... triples) {
        ReadingSeries.Builder builder = new ReadingSeries.Builder();
        for (int i = 0; i < triples.length; i += 3) {
            builder.add(
                    at((Integer) triples[i]).toEpochMilli(),
                    ((Number) triples[i + 1]).doubleValue(),
                    Double.NaN,
                    (Quality) triples[i + 2]);
        }
        return builder.build();
    }

    private static Instant at(int minutes) {
        return FROM.plus(Duration.ofMinutes(minutes));
    }

    private static ReadingSeries walk(Random random, CalendarAxis axis) {
        ReadingSeries.Builder builder = new ReadingSeries.Builder();
        double value = 27;
        for (Instant at = axis.from(); at.isBefore(axis.to()); at = at.plusSeconds(1 + random.nextInt(1200))) {
            value += random.nextGaussian() * 0.1;
            builder.add(at.toEpochMilli(), value, Double.NaN, Quality.GOOD);
        }
        return builder.build();
    }

    private static List<Double> valuesAt(ReadingSeries readings, CalendarAxis axis, int pixel) {
        return IntStream.range(0, readings.size())
                .filter(i -> Math.floor(axis.x(Instant.ofEpochMilli(readings.epochMillis(i)))) == pixel)
                .mapToObj(readings::temperatureCelsius)
                .toList();
    }
}
