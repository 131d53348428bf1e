package org.moultwright.store.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.moultwright.domain.Quality;
import org.moultwright.domain.ReadingSeries;

class PackedLinesTest {
    @Test
    void rawLinesComeBackAsTheyWere() {
        ReadingSeries.Builder readings = new ReadingSeries.Builder();
        TreeMap<Long, String> lines = new TreeMap<>();
        String[] odd = {"t=26.5;h=71", "°\u0000 \t\"", "\u0001" + "2 26.50", "\u0003", "-26.5 26.50 026.5 2 6", "$%\\1"
        };
        for (int i = 0; i < 60; i++) {
            readings.add(i * 1000L - 5, i % 7 == 0 ? Double.NaN : 26.5, 71, Quality.SUSPECT);
            if (i % 5 > 0) {
                lines.put(i * 1000L - 5, odd[i % odd.length]);
            }
        }
        ReadingSeries series = readings.build();
        assertThat(PackedLines.unpack(PackedLines.pack(lines, series), series)).isEqualTo(lines);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"%.2f", "T=%.2f C RH=%.1f %%", "{\"t\":%.4f,\"h\":%.2f}", "%2$.1f,+%1$.2f,OK"})
    void whatLinesSayOfTheirReadingsIsNotKeptTwice(String pattern) {
        SplittableRandom random = new SplittableRandom(11);
        ReadingSeries.Builder readings = new ReadingSeries.Builder();
        TreeMap<Long, String> lines = new TreeMap<>();
        for (int i = 0; i < 360; i++) {
            double temperature = random.nextInt(2600, 2800) / 100.0;
            double humidity = random.nextInt(600, 800) / 10.0;
            readings.add(i * 10_000L, temperature, humidity, Quality.GOOD);
            lines.put(i * 10_000L, String.format(Locale.ROOT, pattern, temperature, humidity));
        }
        ReadingSeries series = readings.build();
        byte[] packed = PackedLines.pack(lines, series);
        assertThat(PackedLines.unpack(packed, series)).isEqualTo(lines);
        assertThat(packed.length).isLessThan(80);
    }
}
