package org.moultwright.compute.climate;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.DoubleUnaryOperator;
import org.moultwright.domain.Account;
import org.moultwright.domain.Brood;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.Cause;
import org.moultwright.domain.Check;
import org.moultwright.domain.ContainerKind;
import org.moultwright.domain.Extremes;
import org.moultwright.domain.InstantRange;
import org.moultwright.domain.Ledger;
import org.moultwright.domain.LedgerEntry;
import org.moultwright.domain.Look;
import org.moultwright.domain.ProbeStay;
import org.moultwright.domain.Quality;
import org.moultwright.domain.ReadingSeries;
import org.moultwright.domain.SetPoint;
import org.moultwright.domain.Span;
import org.moultwright.domain.Stage;
import org.moultwright.domain.Stay;

/** An invented brood room, put together container by container and probe by probe. */
final class RoomFixture {
    static final Instant LAID = Instant.parse("2026-03-01T00:00:00Z");
    static final String TRAY = "T1";

    private final List<Stay> stays = new ArrayList<>();
    private final List<ProbeStay> probeStays = new ArrayList<>();
    private final List<SetPoint> setPoints = new ArrayList<>();
    private final List<LedgerEntry> entries = new ArrayList<>();
    private final List<Check> checks = new ArrayList<>();
    private final Map<String, ReadingSeries> readings = new HashMap<>();
    private final List<Extremes> extremes = new ArrayList<>();
    private Optional<InstantRange> laid = Optional.of(new InstantRange(LAID, LAID));

    static Instant day(double days) {
        return LAID.plusMillis(Math.round(days * Duration.ofDays(1).toMillis()));
    }

    static Span fromDay(double day) {
        return new Span(day(day), Optional.empty());
    }

    static Span span(double fromDay, double toDay) {
        return new Span(day(fromDay), Optional.of(day(toDay)));
    }

    RoomFixture withoutLaying() {
        laid = Optional.empty();
        return this;
    }

    RoomFixture stay(String container, ContainerKind kind, String inside, Span span) {
        stays.add(new Stay(container, kind, Optional.of(inside).filter(code -> !code.isEmpty()), span));
        return this;
    }

    RoomFixture setPoint(String container, Span span, double celsius) {
        setPoints.add(new SetPoint(container, span, celsius, Double.NaN));
        return this;
    }

    RoomFixture probe(String probe, String container, Span span, double offsetCelsius, double sdCelsius) {
        probeStays.add(new ProbeStay(probe, container, span, offsetCelsius, sdCelsius));
        return this;
    }

    RoomFixture extremes(String container, double fromDay, double toDay, double lowest, double highest) {
        extremes.add(new Extremes(container, day(fromDay), day(toDay), lowest, highest));
        return this;
    }

    RoomFixture readings(String probe, ReadingSeries series) {
        readings.put(probe, series);
        return this;
    }

    /** Readings of a course of temperature over days since laying. */
    RoomFixture readings(
            String probe, double fromDay, double toDay, double everyMinutes, DoubleUnaryOperator celsiusAtDay) {
        ReadingSeries.Builder builder = new ReadingSeries.Builder();
        readings.getOrDefault(probe, ReadingSeries.EMPTY).forEach(builder::add);
        int count = (int) Math.floor((toDay - fromDay) * 1440 / everyMinutes + 1e-9);
        for (int i = 0; i <= count; i++) {
            double day = fromDay + i * everyMinutes / 1440;
            builder.add(day(day).toEpochMilli(), celsiusAtDay.applyAsDouble(day), Double.NaN, Quality.GOOD);
        }
        return readings(probe, builder.build());
    }

    RoomFixture check(double day) {
        checks.add(new Check(new UUID(0, checks.size()), TRAY, day(day), Map.of(Stage.EGG, new Look.Full(10))));
        return this;
    }

    RoomFixture moved(double day, Account from, String toTray, int count) {
        entries.add(LedgerEntry.of(
                new UUID(1, entries.size()), day(day), from, Account.tray(toTray), Stage.EGG, count, Cause.MOVED));
        return this;
    }

    BroodRecord record() {
        return new BroodRecord(
                brood(),
                Ledger.of(entries),
                checks,
                stays,
                probeStays,
                setPoints,
                readings,
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                extremes,
                List.of(),
                List.of());
    }

    LivedTemperature livedUntil(double day) {
        return LivedTemperature.of(record(), TRAY, day(day));
    }

    private Brood brood() {
        return new Brood(
                "CC-1",
                "Chromatopelma cyaneopubescens",
                ZoneOffset.UTC,
                laid,
                Optional.empty(),
                List.of(Stage.EGG, Stage.POSTEMBRYO, Stage.INSTAR1, Stage.INSTAR2),
                27.0,
                Optional.empty());
    }
}
