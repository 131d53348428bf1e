package org.moultwright.workflow;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import org.moultwright.compute.forecast.BroodForecast;
import org.moultwright.compute.forecast.ClimatePlan;
import org.moultwright.compute.forecast.ForecastQuestion;
import org.moultwright.compute.forecast.Forecaster;
import org.moultwright.compute.forecast.PreparedForecast;

/**
 * Answers forecasts and keeps what each was made from, so that the same brood can be asked at once how its dates
 * would move with another set-point. Of a brood only the newest is kept. Safe to share.
 */
public final class PreparedForecasts implements Function<ForecastQuestion, BroodForecast> {
    private final Forecaster forecaster;
    private final Map<String, PreparedForecast> newest = new ConcurrentHashMap<>();

    public PreparedForecasts(Forecaster forecaster) {
        this.forecaster = forecaster;
    }

    /** The forecast with every place left as it is. */
    @Override
    public BroodForecast apply(ForecastQuestion question) {
        String brood = question.record().brood().code();
        Optional<PreparedForecast> prepared = forecaster.prepare(question);
        if (prepared.isEmpty()) {
            newest.remove(brood);
            return forecaster.forecast(question);
        }
        newest.put(brood, prepared.get());
        return prepared.get().under(ClimatePlan.AS_IT_IS);
    }

    /** What the newest forecast of a brood was made from; empty where nothing about it has a date. */
    public Optional<PreparedForecast> of(String brood) {
        return Optional.ofNullable(newest.get(brood));
    }
}
