package org.moultwright.exchange;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.UUID;
import java.util.function.Supplier;
import org.moultwright.domain.Brood;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.CareNote;
import org.moultwright.domain.Check;
import org.moultwright.domain.ContainerKind;
import org.moultwright.domain.Extremes;
import org.moultwright.domain.InstantRange;
import org.moultwright.domain.Ledger;
import org.moultwright.domain.LedgerEntry;
import org.moultwright.domain.LedgerHistories;
import org.moultwright.domain.Look;
import org.moultwright.domain.MouldNote;
import org.moultwright.domain.Pot;
import org.moultwright.domain.PotEvent;
import org.moultwright.domain.ProbeStay;
import org.moultwright.domain.Quality;
import org.moultwright.domain.RateForm;
import org.moultwright.domain.Reading;
import org.moultwright.domain.ReadingSeries;
import org.moultwright.domain.RunUpEvent;
import org.moultwright.domain.SetPoint;
import org.moultwright.domain.Span;
import org.moultwright.domain.Stage;
import org.moultwright.domain.Stay;
import org.moultwright.domain.Timing;

/** Seeded random brood records with awkward words and numbers in every table. All invented. */
final class RandomRecords {
    private static final Instant START = Instant.parse("2026-03-01T20:00:00Z");
    private static final List<String> WORDS = List.of(
            "plain",
            "=1+1",
            "'shielded",
            "''",
            "-5",
            "+a",
            "@x",
            "a,b",
            "two\nlines",
            "cr\r\nlf",
            "\"said\"",
            " spaced ",
            "ünïcode 蜘蛛",
            "#",
            "tab\tx");

    private final SplittableRandom random;

    private RandomRecords(long seed) {
        random = new SplittableRandom(seed);
    }

    static BroodRecord record(long seed) {
        return new RandomRecords(seed).record("XX-26-" + seed);
    }

    private BroodRecord record(String code) {
        List<Check> checks = some(this::check);
        checks.sort(Comparator.comparing(Check::at).thenComparing(Check::tray));
        List<Pot> pots = some(() -> new Pot(word() + id(), "A1", at(), word(), random.nextBoolean() ? "" : word()));
        return new BroodRecord(
                brood(code),
                Ledger.of(LedgerHistories.entries(random.nextLong()).stream()
                        .map(this::noted)
                        .toList()),
                checks,
                List.of(
                        new Stay("room", ContainerKind.ROOM, Optional.empty(), open()),
                        new Stay("=box, 1", ContainerKind.BOX, Optional.of("room"), open()),
                        new Stay("A1", ContainerKind.TRAY, Optional.of("=box, 1"), firstWeek()),
                        new Stay("A1", ContainerKind.TRAY, Optional.of("room"), afterwards())),
                List.of(
                        new ProbeStay("P-1", "A1", firstWeek(), random.nextDouble(-2, 2), random.nextDouble()),
                        new ProbeStay("P-1", "room", afterwards(), 0, 0)),
                List.of(
                        new SetPoint("room", firstWeek(), random.nextDouble(20, 30), Double.NaN),
                        new SetPoint("room", afterwards(), 27, random.nextDouble(100))),
                Map.of("P-1", readings(), "-P 2", readings()),
                some(() -> new MouldNote(id(), at(), "A1", word(), word(), word(), random.nextInt(3))),
                some(() -> new CareNote(id(), at(), "A2", word(), word())),
                pots,
                some(() -> new RunUpEvent(id(), at(), word(), random.nextBoolean() ? "" : word())),
                extremes(),
                pots.stream()
                        .flatMap(pot -> some(() -> new PotEvent(id(), at(), pot.code(), what(), word())).stream())
                        .toList(),
                List.of());
    }

    private PotEvent.What what() {
        return PotEvent.What.values()[random.nextInt(PotEvent.What.values().length)];
    }

    private List<Extremes> extremes() {
        boolean humid = random.nextBoolean();
        return some(() -> {
            Instant from = at();
            double lowest = random.nextDouble(-40, 40);
            double driest = humid ? random.nextDouble(50) : Double.NaN;
            return new Extremes(
                    random.nextBoolean() ? "A1" : "=box, 1",
                    from,
                    from.plusNanos(1 + random.nextLong(Duration.ofDays(30).toNanos())),
                    lowest,
                    lowest + random.nextDouble(40),
                    driest,
                    driest + random.nextDouble(50));
        });
    }

    private LedgerEntry noted(LedgerEntry entry) {
        return new LedgerEntry(
                entry.id(),
                entry.at(),
                entry.from(),
                entry.to(),
                entry.stage(),
                entry.count(),
                entry.cause(),
                random.nextBoolean() ? "" : word(),
                entry.corrects());
    }

    private Brood brood(String code) {
        boolean known = random.nextBoolean();
        return new Brood(
                code,
                "Invented \"species\"",
                ZoneId.of("Europe/Lisbon"),
                known ? Optional.of(new InstantRange(START, at())) : Optional.empty(),
                known ? Optional.of(at()) : Optional.empty(),
                List.of(Stage.values()),
                random.nextDouble(20, 30),
                random.nextInt(5) == 0 ? Optional.empty() : Optional.of(timing()));
    }

    private Timing timing() {
        List<RateForm> forms = List.of(
                new RateForm.Linear(random.nextDouble(15)),
                new RateForm.Briere1(11, 30 + random.nextDouble(9)),
                new RateForm.Lactin2(random.nextDouble(0.2), 45.1, random.nextDouble(1, 9), -random.nextDouble()),
                new RateForm.Table(List.of(new RateForm.Point(20, random.nextDouble()), new RateForm.Point(27.5, 1))));
        return new Timing(
                Map.of(Stage.POSTEMBRYO, 30.25, Stage.INSTAR1, 40 + random.nextDouble(), Stage.INSTAR2, 72.125),
                random.nextDouble(),
                forms.get(random.nextInt(forms.size())));
    }

    /** Never a whole count, which the ledger would have to explain: some nymphs are always merely seen. */
    private Check check() {
        Map<Stage, Look> looks = new EnumMap<>(Stage.class);
        looks.put(Stage.INSTAR1, new Look.Seen());
        looks.put(
                Stage.EGG,
                random.nextBoolean() ? new Look.Full(random.nextInt(300)) : new Look.Sample(random.nextInt(20), 20));
        looks.put(Stage.INSTAR2, new Look.None());
        return new Check(id(), "A" + (1 + random.nextInt(3)), at(), looks);
    }

    private ReadingSeries readings() {
        ReadingSeries.Builder series = new ReadingSeries.Builder();
        Instant at = START;
        for (int i = random.nextInt(40); i > 0; i--) {
            at = at.plusMillis(1 + random.nextInt(600_000));
            Quality quality = Quality.values()[random.nextInt(3)];
            double humidity = random.nextInt(4) == 0 ? Double.NaN : random.nextDouble(100);
            double temperature = quality == Quality.FAULT ? Double.NaN : random.nextDouble(-40, 85);
            series.add(new Reading(at, temperature, humidity, quality));
        }
        return series.build();
    }

    private static Span open() {
        return new Span(START, Optional.empty());
    }

    private static Span firstWeek() {
        return new Span(START, Optional.of(START.plus(Duration.ofDays(7))));
    }

    private static Span afterwards() {
        return new Span(START.plus(Duration.ofDays(7)), Optional.empty());
    }

    private Instant at() {
        return START.plusNanos(random.nextLong(Duration.ofDays(90).toNanos()));
    }

    private String word() {
        return WORDS.get(random.nextInt(WORDS.size()));
    }

    private UUID id() {
        return new UUID(random.nextLong(), random.nextLong());
    }

    private <T> List<T> some(Supplier<T> one) {
        List<T> rows = new ArrayList<>();
        for (int i = random.nextInt(12); i > 0; i--) {
            rows.add(one.get());
        }
        return rows;
    }
}
