package org.moultwright.domain;

import java.time.Instant;
import java.util.Arrays;
import java.util.function.Consumer;

/**
 * Many readings of one probe, in order of time, in columns: under 30 bytes a reading.
 *
 * <p>Immutable. No two readings share a millisecond: of such the one added first stays. The beginning of a series
 * costs no memory of its own.
 */
public final class ReadingSeries {
    public static final ReadingSeries EMPTY = new Builder().build();

    private final long[] epochMillis;
    private final double[] temperaturesCelsius;
    private final double[] humiditiesPercent;
    private final Quality[] qualities;
    private final int size;

    private ReadingSeries(
            long[] epochMillis, double[] temperatures, double[] humidities, Quality[] qualities, int size) {
        this.epochMillis = epochMillis;
        this.temperaturesCelsius = temperatures;
        this.humiditiesPercent = humidities;
        this.qualities = qualities;
        this.size = size;
    }

    public int size() {
        return size;
    }

    public boolean isEmpty() {
        return size == 0;
    }

    public long epochMillis(int index) {
        return epochMillis[index];
    }

    public double temperatureCelsius(int index) {
        return temperaturesCelsius[index];
    }

    public double humidityPercent(int index) {
        return humiditiesPercent[index];
    }

    public Quality quality(int index) {
        return qualities[index];
    }

    public Reading reading(int index) {
        return new Reading(
                Instant.ofEpochMilli(epochMillis[index]),
                temperaturesCelsius[index],
                humiditiesPercent[index],
                quality(index));
    }

    /** The index of the first reading at or after an instant; {@link #size()} if there is none. */
    public int indexAtOrAfter(Instant instant) {
        int found = Arrays.binarySearch(epochMillis, 0, size, instant.toEpochMilli());
        return found >= 0 ? found : -found - 1;
    }

    /** The readings taken up to and including an instant. */
    public ReadingSeries until(Instant instant) {
        return slice(0, indexAtOrAfter(instant.plusMillis(1)));
    }

    /** The readings taken at or after {@code from} and before {@code to}. */
    public ReadingSeries between(Instant from, Instant to) {
        int first = indexAtOrAfter(from);
        return slice(first, Math.max(first, indexAtOrAfter(to)));
    }

    /** These readings before an instant, and then those of another series, which has none before it. */
    public ReadingSeries replacedFrom(Instant instant, ReadingSeries others) {
        int kept = indexAtOrAfter(instant);
        Require.that(
                others.isEmpty() || others.epochMillis[0] >= instant.toEpochMilli(),
                "the other series begins before " + instant);
        // Copying beyond the end leaves room there.
        ReadingSeries joined = copy(0, kept + others.size());
        System.arraycopy(others.epochMillis, 0, joined.epochMillis, kept, others.size());
        System.arraycopy(others.temperaturesCelsius, 0, joined.temperaturesCelsius, kept, others.size());
        System.arraycopy(others.humiditiesPercent, 0, joined.humiditiesPercent, kept, others.size());
        System.arraycopy(others.qualities, 0, joined.qualities, kept, others.size());
        return joined;
    }

    /** These readings at instants another series has none of. */
    public ReadingSeries without(ReadingSeries others) {
        if (others.isEmpty()) {
            return this;
        }
        Builder left = new Builder();
        for (int i = 0; i < size; i++) {
            if (Arrays.binarySearch(others.epochMillis, 0, others.size, epochMillis[i]) < 0) {
                left.add(epochMillis[i], temperaturesCelsius[i], humiditiesPercent[i], qualities[i]);
            }
        }
        return left.build();
    }

    /** Whether this is another series, or that and later readings. */
    public boolean continues(ReadingSeries other) {
        int shared = other.size();
        return shared <= size()
                && Arrays.equals(epochMillis, 0, shared, other.epochMillis, 0, shared)
                && Arrays.equals(temperaturesCelsius, 0, shared, other.temperaturesCelsius, 0, shared)
                && Arrays.equals(humiditiesPercent, 0, shared, other.humiditiesPercent, 0, shared)
                && Arrays.equals(qualities, 0, shared, other.qualities, 0, shared);
    }

    public void forEach(Consumer<Reading> action) {
        for (int i = 0; i < size(); i++) {
            action.accept(reading(i));
        }
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof ReadingSeries series && size == series.size && continues(series);
    }

    @Override
    public int hashCode() {
        return size == 0 ? 0 : 31 * (31 * size + Long.hashCode(epochMillis[0])) + Long.hashCode(epochMillis[size - 1]);
    }

    @Override
    public String toString() {
        return "ReadingSeries[" + size() + "]";
    }

    private ReadingSeries slice(int from, int to) {
        if (from == 0) {
            return to == size
                    ? this
                    : new ReadingSeries(epochMillis, temperaturesCelsius, humiditiesPercent, qualities, to);
        }
        return copy(from, to);
    }

    private ReadingSeries copy(int from, int to) {
        return new ReadingSeries(
                Arrays.copyOfRange(epochMillis, from, to),
                Arrays.copyOfRange(temperaturesCelsius, from, to),
                Arrays.copyOfRange(humiditiesPercent, from, to),
                Arrays.copyOfRange(qualities, from, to),
                to - from);
    }

    /** Gathers readings in any order; building sorts them by time. Not safe to share. */
    public static final class Builder {
        private long[] epochMillis = new long[64];
        private double[] temperatures = new double[64];
        private double[] humidities = new double[64];
        private Quality[] qualities = new Quality[64];
        private int size;
        private boolean inOrder = true;

        public Builder add(Reading reading) {
            return add(
                    reading.takenAt().toEpochMilli(),
                    reading.temperatureCelsius(),
                    reading.humidityPercent(),
                    reading.quality());
        }

        public Builder add(
                long takenAtEpochMillis, double temperatureCelsius, double humidityPercent, Quality quality) {
            if (size == epochMillis.length) {
                grow();
            }
            inOrder &= size == 0 || epochMillis[size - 1] < takenAtEpochMillis;
            epochMillis[size] = takenAtEpochMillis;
            temperatures[size] = temperatureCelsius;
            humidities[size] = humidityPercent;
            qualities[size] = quality;
            size++;
            return this;
        }

        public ReadingSeries build() {
            ReadingSeries asAdded =
                    new ReadingSeries(epochMillis, temperatures, humidities, qualities, size).copy(0, size);
            return inOrder ? asAdded : inOrder(asAdded);
        }

        private void grow() {
            int length = size * 2;
            epochMillis = Arrays.copyOf(epochMillis, length);
            temperatures = Arrays.copyOf(temperatures, length);
            humidities = Arrays.copyOf(humidities, length);
            qualities = Arrays.copyOf(qualities, length);
        }

        private static ReadingSeries inOrder(ReadingSeries series) {
            Integer[] order = new Integer[series.size()];
            Arrays.setAll(order, i -> i);
            Arrays.sort(order, (a, b) -> Long.compare(series.epochMillis[a], series.epochMillis[b]));
            Builder sorted = new Builder();
            for (int i : order) {
                boolean isFirstOfInstant =
                        sorted.size == 0 || sorted.epochMillis[sorted.size - 1] != series.epochMillis[i];
                if (isFirstOfInstant) {
                    sorted.add(
                            series.epochMillis[i],
                            series.temperaturesCelsius[i],
                            series.humiditiesPercent[i],
                            series.quality(i));
                }
            }
            return sorted.build();
        }
    }
}
