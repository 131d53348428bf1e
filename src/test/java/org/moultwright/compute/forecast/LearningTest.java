package org.moultwright.compute.forecast;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.moultwright.compute.stage.Chance;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.Stage;
import org.moultwright.exchange.TimingsFile;

/** What completed broods and plans change in a forecast, on invented broods. */
class LearningTest {
    private static final double EARLY = 0.05;
    private final Chance chance = new Chance(41);
    private final SimulatedHusbandry husbandry = SimulatedHusbandry.of(chance);
    private final SimulatedBrood brood = SimulatedBrood.of("new", husbandry, 1, chance);

    @Test
    void completedBroodsNarrowTheNextAndAreCounted() {
        List<BroodRecord> earlier = List.of(record("first"), record("second"), record("third"));
        BroodForecast alone = forecast(PastBroods.NONE);
        BroodForecast taught = forecast(PastBroods.of(earlier));
        assertThat(alone.priorFrom()).isEqualTo(PriorSource.FOLDER);
        assertThat(taught.priorFrom()).isEqualTo(PriorSource.LEARNED);
        assertThat(taught.learnedBroods()).isEqualTo(3);
        assertThat(width(taught)).isLessThan(width(alone).multipliedBy(3).dividedBy(4));
    }

    @Test
    void lessonsAreWorkedOutOnce() {
        PastBroods past = PastBroods.of(List.of(record("first")));
        Belief belief = Belief.of(brood.record().brood(), Boundaries.of(brood.record()), TimingsFile.shipped());
        List<Stage> boundaries = Boundaries.of(brood.record());
        assertThat(past.lessons(belief, boundaries, 27)).isSameAs(past.lessons(belief, boundaries, 27));
    }

    @Test
    void warmerPlansComeEarlierAndDoNotTouchThePast() {
        Instant now = brood.asOf(0.6);
        PreparedForecast prepared = new Forecaster(TimingsFile.shipped())
                .prepare(new ForecastQuestion(brood.record(), now, PastBroods.NONE, 3, List.of()))
                .orElseThrow();
        MoultForecast cool = lastMoult(prepared.under(ClimatePlan.from(now, 21)));
        MoultForecast asIs = lastMoult(prepared.under(ClimatePlan.AS_IT_IS));
        MoultForecast warm = lastMoult(prepared.under(ClimatePlan.from(now, 31)));
        assertThat(warm.half().p50()).isBefore(asIs.half().p50());
        assertThat(asIs.half().p50()).isBefore(cool.half().p50());
        assertThat(prepared.under(ClimatePlan.from(now, 31))
                        .trays()
                        .get(0)
                        .moults()
                        .get(0))
                .isEqualTo(prepared.under(ClimatePlan.AS_IT_IS)
                        .trays()
                        .get(0)
                        .moults()
                        .get(0));
    }

    private BroodRecord record(String code) {
        return SimulatedBrood.of(code, husbandry, 1, chance).record();
    }

    private BroodForecast forecast(PastBroods past) {
        return new Forecaster(TimingsFile.shipped())
                .forecast(new ForecastQuestion(brood.record(), brood.asOf(EARLY), past, 3, List.of()));
    }

    private static MoultForecast lastMoult(BroodForecast forecast) {
        return forecast.trays().get(0).moults().get(2);
    }

    private static Duration width(BroodForecast forecast) {
        InstantInterval half = lastMoult(forecast).half();
        return Duration.between(half.p10(), half.p90());
    }
}
