package org.moultwright.compute.history;

import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.moultwright.compute.forecast.BroodForecast;
import org.moultwright.compute.forecast.Composition;
import org.moultwright.compute.forecast.CountInterval;
import org.moultwright.domain.Stage;

/**
 * A brood's forecast read as days to come.
 *
 * <p>Bounds of the trays are added as though all trays fared alike. They share most of what is uncertain, and
 * where they do not the sum is too wide rather than too narrow.
 */
public final class Outlook {
    private Outlook() {}

    /** The days forecast, in order; only those for which every tray with a forecast has one. */
    public static List<OutlookDay> of(BroodForecast forecast) {
        return between(Instant.MIN, Instant.MAX, forecast);
    }

    /** Those of them after one instant and not after another. */
    public static List<OutlookDay> between(Instant after, Instant until, BroodForecast forecast) {
        TreeMap<Instant, List<Composition>> byInstant = new TreeMap<>();
        forecast.trays().stream()
                .flatMap(tray -> tray.compositions().stream())
                .filter(composition ->
                        composition.at().isAfter(after) && !composition.at().isAfter(until))
                .forEach(composition -> byInstant
                        .computeIfAbsent(composition.at(), at -> new ArrayList<>())
                        .add(composition));
        long forecastTrays = forecast.trays().stream()
                .filter(tray -> !tray.compositions().isEmpty())
                .count();
        return byInstant.values().stream()
                .filter(trays -> trays.size() == forecastTrays)
                .map(Outlook::sum)
                .toList();
    }

    private static OutlookDay sum(List<Composition> trays) {
        Map<Stage, Double> living = new EnumMap<>(Stage.class);
        double low = 0;
        double middle = 0;
        double high = 0;
        for (Composition tray : trays) {
            tray.byStage().forEach((stage, count) -> living.merge(stage, count.p50(), Double::sum));
            low += tray.alive().p10();
            middle += tray.alive().p50();
            high += tray.alive().p90();
        }
        return new OutlookDay(trays.get(0).at(), living, new CountInterval(low, middle, high));
    }
}
