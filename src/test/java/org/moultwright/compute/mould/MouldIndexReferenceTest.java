package org.moultwright.compute.mould;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.moultwright.compute.Fixture;

/** Against mould.csv beside this test; no published table of the model's times exists. */
class MouldIndexReferenceTest {
    private static final Fixture MOULD = Fixture.at("mould/mould.csv");

    static Stream<String> climates() {
        return MOULD.rows().stream()
                .filter(row -> row.get("quantity").equals("tm.weeks"))
                .map(row -> row.get("case"));
    }

    @ParameterizedTest
    @MethodSource("climates")
    void theModelsTermsAgree(String name) {
        MouldClimate climate = climate(name);

        assertThat(climate.weeksToFirstGrowth()).isCloseTo(MOULD.value(name, "tm.weeks"), within(1e-9));
        assertThat(climate.weeksToVisibleGrowth()).isCloseTo(MOULD.value(name, "tv.weeks"), within(1e-9));
        assertThat(climate.growthFactor(1)).isCloseTo(MOULD.value(name, "k1.M>=1.original"), within(1e-9));
        assertThat(climate.highestIndex()).isCloseTo(MOULD.value(name, "Mmax.VS"), within(1e-9));
    }

    @ParameterizedTest
    @MethodSource("climates")
    void theFirstGrowthComesWhenQuadratureSays(String name) {
        double days = MOULD.value(name, "days_to_M1.VS");
        MouldClimate climate = climate(name);

        if (Double.isInfinite(days)) {
            assertThat(MouldIndex.NONE.after(climate, 3000).value()).isLessThan(1);
        } else {
            assertThat(MouldIndex.NONE.after(climate, days).value()).isCloseTo(1, within(1e-5));
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {5, 10, 15, 20, 25, 30})
    void theCriticalHumidityAgrees(int celsius) {
        assertThat(new MouldClimate(celsius, 90).criticalHumidityPercent())
                .isCloseTo(MOULD.value("T=" + celsius, "RHcrit"), within(1e-9));
    }

    @Test
    void dryAirNeitherGrowsNorTakesBack() {
        MouldIndex grown = new MouldIndex(1.5);

        assertThat(grown.after(new MouldClimate(27, 60), 30)).isEqualTo(grown);
        assertThat(MouldIndex.NONE.after(new MouldClimate(27, 79), 30)).isEqualTo(MouldIndex.NONE);
    }

    private static MouldClimate climate(String name) {
        String[] parts = name.split("/", 2);
        return new MouldClimate(Double.parseDouble(parts[0]), Double.parseDouble(parts[1]));
    }
}
