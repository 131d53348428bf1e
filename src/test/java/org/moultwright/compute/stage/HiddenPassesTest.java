package org.moultwright.compute.stage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The recursion over hidden passes against every way in which five animals may pass, counted one by one. */
class HiddenPassesTest {
    private static final int ANIMALS = 5;

    @Test
    void agreesWithEveryWayCounted() {
        double[] passedBy = {0.15, 0.4, 0.8};
        List<Glimpse> looks = List.of(
                Glimpse.sample(1, ANIMALS, 1, 8, 1, 4),
                Glimpse.seen(2, ANIMALS),
                Glimpse.sample(3, ANIMALS, 1, 8, 3, 5));
        assertThat(HiddenPasses.logProbability(looks, passedBy))
                .isCloseTo(Math.log(countedOneByOne(looks, passedBy)), within(1e-10));
    }

    @Test
    void oneSightIsTheChanceThatAnyPassed() {
        assertThat(HiddenPasses.logProbability(List.of(Glimpse.seen(1, 40)), new double[] {0.05}))
                .isCloseTo(Math.log1p(-Math.pow(0.95, 40)), within(1e-10));
    }

    @Test
    void whatCouldNotBeSeenIsUnlikelyAndNoError() {
        Glimpse allMoulted = Glimpse.sample(1, 10, 0, 10, 10, 10);
        Glimpse noneMoulted = Glimpse.sample(2, 10, 0, 10, 0, 10);
        assertThat(HiddenPasses.logProbability(List.of(allMoulted, noneMoulted), new double[] {0.5, 0.6}))
                .isFinite()
                .isLessThan(-20);
    }

    @Test
    void thousandsAreNoTrouble() {
        Glimpse look = Glimpse.sample(1, 20_000, 0, 20_000, 100, 400);
        double likely = HiddenPasses.logProbability(List.of(look), new double[] {0.25});
        double unlikely = HiddenPasses.logProbability(List.of(look), new double[] {0.35});
        assertThat(likely).isBetween(-4.0, 0.0).isGreaterThan(unlikely + 5);
    }

    /** What one sample says does not hang on the number it was drawn from, as long as none had passed before. */
    @Test
    void aSampleOfVeryManySaysWhatOneOfFewerDoes() {
        double[] passedBy = {0.3};
        Glimpse ofMany = Glimpse.sample(1, 20_000, 0, 20_000, 24, 100);
        Glimpse ofFewer = Glimpse.sample(1, 800, 0, 800, 24, 100);
        assertThat(ofMany.candidates()).isEqualTo(Glimpse.MOST_SAMPLED);
        assertThat(HiddenPasses.logProbability(List.of(ofMany), passedBy))
                .isCloseTo(HiddenPasses.logProbability(List.of(ofFewer), passedBy), within(1e-9));
    }

    @Test
    void whereAllOfVeryManyWereDrawnTheLooksAgreeWithEachOther() {
        List<Glimpse> looks = List.of(
                Glimpse.sample(1, 20_000, 0, 20_000, 3_000, 19_000),
                Glimpse.sample(2, 20_000, 0, 20_000, 2_999, 19_000));
        assertThat(HiddenPasses.logProbability(looks, new double[] {0.15, 0.16}))
                .isBetween(-15.0, 0.0);
    }

    @Test
    void aSightAmongVeryManyIsWeighedAmongThemAll() {
        Glimpse sight = Glimpse.seen(1, 20_000);
        Glimpse sample = Glimpse.sample(2, 20_000, 0, 20_000, 5, 100);
        assertThat(HiddenPasses.logProbability(List.of(sight, sample), new double[] {1e-5, 0.04}))
                .isCloseTo(
                        Math.log1p(-Math.pow(1 - 1e-5, 20_000))
                                + HiddenPasses.logProbability(List.of(sample), new double[] {0.04}),
                        within(1e-9));
    }

    /** Each animal passes before the first, second or third look, or after them: 4^5 ways. */
    private static double countedOneByOne(List<Glimpse> looks, double[] passedBy) {
        double sum = 0;
        int ways = (int) Math.pow(4, ANIMALS);
        for (int way = 0; way < ways; way++) {
            double chance = 1;
            int[] passed = new int[3];
            int rest = way;
            for (int animal = 0; animal < ANIMALS; animal++) {
                int when = rest % 4;
                rest /= 4;
                chance *= (when == 3 ? 1 : passedBy[when]) - (when == 0 ? 0 : passedBy[when - 1]);
                for (int look = when; look < 3; look++) {
                    passed[look]++;
                }
            }
            for (int look = 0; look < 3; look++) {
                chance *= looks.get(look).chanceIfPassed()[passed[look]];
            }
            sum += chance;
        }
        return sum;
    }
}
