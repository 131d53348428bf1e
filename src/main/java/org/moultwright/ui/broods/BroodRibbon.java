package org.moultwright.ui.broods;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.moultwright.compute.forecast.BroodForecast;
import org.moultwright.compute.forecast.MoultForecast;
import org.moultwright.compute.forecast.SacForecast;
import org.moultwright.compute.history.BroodDay;
import org.moultwright.compute.history.CompositionHistory;
import org.moultwright.compute.history.Outlook;
import org.moultwright.compute.history.OutlookDay;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.Check;
import org.moultwright.domain.InstantRange;
import org.moultwright.domain.Stage;
import org.moultwright.ui.chart.Ribbon;
import org.moultwright.workflow.BroodView;

/** Reads a brood as a ribbon: its record as the past, its forecast as what is expected. */
final class BroodRibbon {
    /** An expectation is shown this long beyond the last moult's window; nothing changes after it. */
    private static final Duration AFTER_LAST_MOULT = Duration.ofDays(3);

    private BroodRibbon() {}

    static Ribbon of(BroodView brood, Instant now) {
        BroodRecord record = brood.record();
        BroodDay today = CompositionHistory.at(record, now);
        List<Ribbon.Point> past = new ArrayList<>(
                CompositionHistory.of(record).stream().map(BroodRibbon::known).toList());
        if (today.alive() > 0 && !past.isEmpty()) {
            past.add(known(today));
        }
        List<Ribbon.Point> expected = brood.forecast()
                .filter(forecast -> today.alive() > 0)
                .map(forecast -> expected(forecast, today))
                .orElse(List.of());
        return new Ribbon(
                record.brood().laid().map(InstantRange::middle),
                record.brood().pulled(),
                past,
                expected,
                record.checks().stream().map(Check::at).toList(),
                brood.forecast().flatMap(BroodForecast::sac).stream()
                        .flatMap(sac -> inside(record, sac))
                        .toList());
    }

    private static Stream<Ribbon.Inside> inside(BroodRecord record, SacForecast sac) {
        Stream<Ribbon.Inside> eggs = record.brood().laid().stream()
                .map(laid -> new Ribbon.Inside(record.brood().stages().get(0), laid.middle()));
        return Stream.concat(
                eggs,
                sac.moults().stream()
                        .map(moult ->
                                new Ribbon.Inside(moult.into(), moult.half().p50())));
    }

    private static Ribbon.Point known(BroodDay day) {
        Map<Stage, Double> living = new EnumMap<>(Stage.class);
        day.living().forEach((stage, count) -> living.put(stage, count.doubleValue()));
        return new Ribbon.Point(day.at(), living, day.potted(), day.lost(), Double.NaN, Double.NaN);
    }

    private static List<Ribbon.Point> expected(BroodForecast forecast, BroodDay today) {
        Instant end = lastMoult(forecast).orElse(today.at()).plus(AFTER_LAST_MOULT);
        List<Ribbon.Point> points = new ArrayList<>();
        Ribbon.Point start = known(today);
        points.add(new Ribbon.Point(
                start.at(), start.living(), start.potted(), start.lost(), start.alive(), start.alive()));
        Outlook.between(today.at(), end, forecast).forEach(day -> points.add(expected(day, start)));
        return points.size() > 1 ? points : List.of();
    }

    /** The middles of the stages need not add up to the middle of the living: they share it in proportion. */
    private static Ribbon.Point expected(OutlookDay day, Ribbon.Point start) {
        double sum =
                day.living().values().stream().mapToDouble(Double::doubleValue).sum();
        double alive = Math.min(start.alive(), day.alive().p50());
        Map<Stage, Double> living = new EnumMap<>(Stage.class);
        day.living().forEach((stage, count) -> living.put(stage, sum > 0 ? count * alive / sum : 0));
        return new Ribbon.Point(
                day.at(),
                living,
                start.potted(),
                start.lost() + start.alive() - alive,
                Math.min(start.alive(), day.alive().p10()),
                Math.min(start.alive(), day.alive().p90()));
    }

    private static Optional<Instant> lastMoult(BroodForecast forecast) {
        return forecast.trays().stream()
                .flatMap(tray -> tray.moults().stream())
                .map(MoultForecast::most)
                .map(most -> most.p90())
                .max(Instant::compareTo);
    }
}
