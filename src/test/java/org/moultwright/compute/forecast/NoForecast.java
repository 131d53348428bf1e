package org.moultwright.compute.forecast;

import java.util.List;
import java.util.Optional;
import org.moultwright.domain.Stage;

/** An answer at no cost, for what is not about forecasts: nothing is expected. */
public final class NoForecast {
    private NoForecast() {}

    public static BroodForecast of(ForecastQuestion question) {
        return new BroodForecast(
                question.record().brood().code(),
                question.asOf(),
                0,
                0,
                PriorSource.GENERAL,
                0,
                List.of(),
                Stage.INSTAR2,
                Optional.empty(),
                List.of());
    }
}
