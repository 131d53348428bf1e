package org.moultwright.workflow;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import org.moultwright.compute.forecast.BroodForecast;
import org.moultwright.compute.forecast.ForecastQuestion;
import org.moultwright.domain.Brood;

/**
 * Forecasts, each kept to be scored later: one for every look at a brood, and one a day without any. Safe to
 * share.
 */
public final class KeptForecasts implements Function<ForecastQuestion, BroodForecast> {
    private static final Duration A_DAY = Duration.ofDays(1);

    private final Function<ForecastQuestion, BroodForecast> forecaster;
    private final ForecastArchive archive;
    private final Map<Brood, Last> lastByBrood = new ConcurrentHashMap<>();

    public KeptForecasts(Function<ForecastQuestion, BroodForecast> forecaster, ForecastArchive archive) {
        this.forecaster = forecaster;
        this.archive = archive;
    }

    @Override
    public BroodForecast apply(ForecastQuestion question) {
        BroodForecast forecast = forecaster.apply(question);
        int checks = (int) question.record().checks().stream()
                .filter(check -> !check.at().isAfter(question.asOf()))
                .count();
        Brood brood = question.record().brood();
        Last last = lastByBrood.computeIfAbsent(brood, this::lastKept);
        if (last.checks() != checks
                || Duration.between(last.asOf(), forecast.asOf()).abs().compareTo(A_DAY) >= 0) {
            keep(brood, forecast, checks);
        }
        return forecast;
    }

    private void keep(Brood brood, BroodForecast forecast, int checks) {
        MadeForecast made = MadeForecast.of(id(forecast, checks), forecast, checks);
        if (!made.events().isEmpty()) {
            try {
                archive.keep(made);
            } catch (AdvisedException notKept) {
                // A forecast not kept is not scored; what ails the store is told by the next entry the keeper makes.
                return;
            }
        }
        lastByBrood.put(brood, new Last(forecast.asOf(), checks));
    }

    private Last lastKept(Brood brood) {
        return archive.latest(brood.code())
                .map(made -> new Last(made.asOf(), made.checks()))
                .orElseGet(() -> new Last(Instant.EPOCH, -1));
    }

    /** The same brood at the same instant after as many looks is the same forecast. */
    private static UUID id(BroodForecast forecast, int checks) {
        String name = forecast.brood() + " " + forecast.asOf() + " " + checks;
        return UUID.nameUUIDFromBytes(name.getBytes(StandardCharsets.UTF_8));
    }

    private record Last(Instant asOf, int checks) {}
}
