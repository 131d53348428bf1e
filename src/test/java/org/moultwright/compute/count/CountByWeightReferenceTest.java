package org.moultwright.compute.count;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.moultwright.compute.Fixture;

/**
 * The 49 of 196 large cities of Cochran, Sampling Techniques, 1977, chapter 6: inhabitants in thousands in
 * 1920 and 1930 (typed from memory; that ratio, total and error agree shows it is the same), against
 * counts.csv beside this test.
 */
class CountByWeightReferenceTest {
    private static final Fixture COUNTS = Fixture.at("count/counts.csv");
    private static final int[] IN_1920 = {
        138, 93, 61, 179, 48, 37, 29, 23, 30, 2, 38, 46, 71, 25, 298, 74, 50, 76, 381, 387, 78, 60, 507, 50, 77, 64, 40,
        136, 243, 256, 94, 36, 45, 67, 120, 172, 66, 46, 121, 44, 64, 56, 40, 116, 87, 43, 43, 161, 36
    };
    private static final int[] IN_1930 = {
        143, 104, 69, 260, 75, 63, 50, 48, 111, 50, 52, 53, 79, 57, 317, 93, 58, 80, 464, 459, 106, 57, 634, 64, 89, 77,
        60, 139, 291, 288, 85, 46, 53, 67, 115, 183, 86, 65, 113, 58, 63, 142, 64, 130, 105, 61, 50, 232, 54
    };

    @Test
    void theCitiesOfCochranAddUp() {
        CountEstimate estimate = CountByWeight.total(cities(), 22919, 49.0 / 196);

        // Published: R 1.239019, total 28397.
        assertThat(estimate.total() / 22919).isCloseTo(1.239019, within(5e-7));
        assertThat(estimate.total()).isCloseTo(28397, within(0.5));
        assertThat(estimate.total()).isCloseTo(COUNTS.value("cochran.cities", "total"), within(1e-6));
        assertThat(estimate.standardError()).isCloseTo(COUNTS.value("cochran.cities", "se"), within(1e-6));
        assertThat(estimate.lower(0.95)).isCloseTo(COUNTS.value("cochran.cities", "lo95"), within(1e-6));
        assertThat(estimate.upper(0.95)).isCloseTo(COUNTS.value("cochran.cities", "hi95"), within(1e-6));
    }

    @Test
    void theShareOfTheWeightCorrectsTheError() {
        List<Scoop> scoops = List.of(new Scoop(48, 1.0), new Scoop(52, 1.1), new Scoop(50, 0.9));

        CountEstimate all = CountByWeight.total(scoops, 3.0);

        assertThat(all.total()).isCloseTo(150, within(1e-12));
        assertThat(all.standardError()).isCloseTo(0, within(1e-9));
        assertThat(CountByWeight.total(scoops, 30.0).total()).isCloseTo(1500, within(1e-9));
    }

    @Test
    void oneScoopGivesATotalWithoutAnError() {
        CountEstimate estimate = CountByWeight.total(List.of(new Scoop(50, 2)), 40);

        assertThat(estimate.total()).isEqualTo(1000);
        assertThat(estimate.standardError()).isNaN();
        assertThat(estimate.lower(0.8)).isNaN();
    }

    @Test
    void countsFarApartAskForAThird() {
        // √((1² + 1² + 2²)/6) = 1: a third count from a difference of 3 on.
        RepeatCounts repeats = RepeatCounts.of(
                List.of(new RepeatCounts.Pair(50, 51), new RepeatCounts.Pair(60, 59), new RepeatCounts.Pair(40, 42)));

        assertThat(repeats.technicalError()).isCloseTo(1, within(1e-12));
        assertThat(repeats.asksForAThird(new RepeatCounts.Pair(50, 52))).isFalse();
        assertThat(repeats.asksForAThird(new RepeatCounts.Pair(50, 47))).isTrue();
    }

    private static List<Scoop> cities() {
        List<Scoop> cities = new ArrayList<>();
        for (int i = 0; i < IN_1920.length; i++) {
            cities.add(new Scoop(IN_1930[i], IN_1920[i]));
        }
        return cities;
    }
}
