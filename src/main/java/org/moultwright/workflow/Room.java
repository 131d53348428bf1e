package org.moultwright.workflow;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.moultwright.compute.forecast.BroodForecast;
import org.moultwright.compute.forecast.ForecastQuestion;
import org.moultwright.compute.forecast.PastBroods;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.LessonNote;
import org.moultwright.domain.Reading;
import org.moultwright.domain.ReadingSeries;

/**
 * Reads the whole room at an instant: every brood as written, as it stands, and as it is expected to go on.
 *
 * <p>Forecasts are kept while their brood's writing is the same, nothing was added to the measured past they
 * rest on, the same completed broods teach them, and they are younger than {@link #FORECAST_LIFE}: a sheet saved for one brood does not cost the
 * others' forecasts. Each probe's history is read once, then only what is new. Safe to share.
 */
public final class Room {
    /** How long a forecast may stand while only time and readings have moved on. */
    static final Duration FORECAST_LIFE = Duration.ofMinutes(15);

    private static final int DAYS_AHEAD = 60;
    private static final int NEWEST = 1;
    private static final long SEED = 20_260_101;

    private final BroodBook book;
    private final ReadingLog readings;
    private final ProbeHistories histories;
    private final Function<ForecastQuestion, BroodForecast> forecaster;
    private final Map<String, Known> known = new HashMap<>();
    private final Teachers teachers = new Teachers();

    /** @param forecaster works out dates; it is asked from several threads at once */
    public Room(BroodBook book, ReadingLog readings, Function<ForecastQuestion, BroodForecast> forecaster) {
        this.book = book;
        this.readings = readings;
        this.histories = new ProbeHistories(readings);
        this.forecaster = forecaster;
    }

    /** The room as it is written: at once, for it neither reads climates nor asks for dates. */
    public WrittenRoom written() {
        return new WrittenRoom(
                records().toList(), readings.latest(), book.latestDeeds(WrittenRoom.DEEDS_LOOKED_AT), book.shelf());
    }

    /** The room at an instant; what was written or measured later is not in it. */
    public synchronized RoomView at(Instant now) {
        List<BroodRecord> written = records().map(record -> record.until(now)).toList();
        List<BroodRecord> whole = written.stream()
                .map(record -> record.withReadings(histories.of(record, now)))
                .toList();
        Map<String, LessonNote> leftOut = book.leftOut();
        teachers.read(whole, leftOut.keySet());
        List<PastBroods> past =
                written.stream().map(record -> teachers.of(record.brood())).toList();
        // Dates of one brood take most of a second; those of many are worked out by all processors.
        List<Known> current = IntStream.range(0, written.size())
                .parallel()
                .mapToObj(i -> known(written.get(i), whole.get(i), past.get(i), now))
                .toList();
        List<BroodView> broods = new ArrayList<>();
        for (int i = 0; i < written.size(); i++) {
            known.put(written.get(i).brood().code(), current.get(i));
            Optional<BroodForecast> forecast = current.get(i).forecast();
            broods.add(new BroodView(whole.get(i), TrayView.all(whole.get(i), forecast, now), forecast));
        }
        return new RoomView(
                now,
                broods,
                latestReadings(now, broods),
                book.latestDeeds(NEWEST).stream().findFirst(),
                leftOut,
                book.shelf(),
                false);
    }

    private Stream<BroodRecord> records() {
        return book.broods().stream().flatMap(brood -> book.find(brood.code()).stream());
    }

    private Known known(BroodRecord written, BroodRecord whole, PastBroods past, Instant now) {
        Known before = known.get(written.brood().code());
        return before != null && before.standsFor(written, whole, past, now) ? before : ask(written, whole, past, now);
    }

    private Known ask(BroodRecord written, BroodRecord whole, PastBroods past, Instant now) {
        boolean isUnseen = written.ledger().opened() == 0 && written.checks().isEmpty();
        if (isUnseen && written.brood().laid().isEmpty()) {
            return new Known(written, now, whole.readings(), past, Optional.empty());
        }
        Instant asOf = SteadyHour.of(whole, now);
        List<Instant> days = IntStream.rangeClosed(0, DAYS_AHEAD)
                .mapToObj(day -> asOf.plus(Duration.ofDays(day)))
                .toList();
        ForecastQuestion question = new ForecastQuestion(whole, asOf, past, SEED, days);
        return new Known(written, now, whole.readings(), past, Optional.of(forecaster.apply(question)));
    }

    private Map<String, Reading> latestReadings(Instant now, List<BroodView> broods) {
        Map<String, Reading> latest = new HashMap<>(WrittenRoom.until(now, readings.latest()));
        broods.forEach(brood -> brood.record().readings().forEach((probe, series) -> {
            if (!series.isEmpty()) {
                latest.putIfAbsent(probe, series.reading(series.size() - 1));
            }
        }));
        return latest;
    }

    /** A brood as it was written and measured, and what others had taught, when its forecast was made. */
    private record Known(
            BroodRecord written,
            Instant asOf,
            Map<String, ReadingSeries> readings,
            PastBroods past,
            Optional<BroodForecast> forecast) {
        /** What dates rest on: neither what happens in pots nor a photo changes any. */
        private static BroodRecord dated(BroodRecord record) {
            return record.withPotEvents(List.of()).withPhotos(List.of());
        }

        boolean standsFor(BroodRecord other, BroodRecord whole, PastBroods teaching, Instant now) {
            return dated(written).equals(dated(other))
                    && past == teaching
                    && Duration.between(asOf, now).abs().compareTo(FORECAST_LIFE) < 0
                    && readings.entrySet().stream()
                            .allMatch(probe -> whole.readings()
                                    .getOrDefault(probe.getKey(), ReadingSeries.EMPTY)
                                    .continues(probe.getValue()));
        }
    }
}
