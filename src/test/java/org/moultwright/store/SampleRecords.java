package org.moultwright.store;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
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

/** Seeded random brood records with something in every table. All invented. */
final class SampleRecords {
    private static final Instant START = Instant.parse("2026-03-01T20:00:00.000001Z");
    private static final List<Stage> STAGES = List.of(Stage.values());

    private final SplittableRandom random;
    private final String code;

    private SampleRecords(long seed) {
        random = new SplittableRandom(seed);
        code = "XX-26-" + seed;
    }

    /** The record of a seed; it names its brood after the seed. */
    static BroodRecord record(long seed) {
        return new SampleRecords(seed).record();
    }

    private BroodRecord record() {
        List<Pot> pots = some(() -> new Pot(code + "-" + random.nextLong(), "A1", at(), "label; ünïcode '\"", "30 ml"));
        return new BroodRecord(
                brood(),
                Ledger.of(LedgerHistories.entries(random.nextLong())),
                some(this::check).stream()
                        .sorted(java.util.Comparator.comparing(Check::at))
                        .toList(),
                stays(),
                List.of(
                        new ProbeStay("P-1", "INC-1", new Span(START, Optional.empty()), 1.3, 0.2),
                        new ProbeStay("P-" + code, "A1", span(), -0.25, 0)),
                List.of(
                        new SetPoint("INC-1", new Span(START, Optional.empty()), 27, Double.NaN),
                        new SetPoint("A1", span(), 26.5, 80)),
                Map.of("P-1", readings(START, 7), "P-" + code, readings(START.plusSeconds(random.nextInt(9999)), 600)),
                some(() -> new MouldNote(id(), at(), "A1", "shells", "speck", "cut out", random.nextInt(3))),
                some(() -> new CareNote(id(), at(), "A2", CareNote.WATERED, "")),
                pots,
                some(() -> new RunUpEvent(id(), at(), "paired", "in the evening")),
                some(this::extremes),
                pots.stream()
                        .map(pot -> new PotEvent(id(), at(), pot.code(), PotEvent.What.MOULTED, "in the night"))
                        .toList(),
                List.of());
    }

    private Brood brood() {
        boolean known = random.nextBoolean();
        return new Brood(
                code,
                "Invented species",
                ZoneId.of("Europe/Lisbon"),
                known ? Optional.of(new InstantRange(START, START.plusSeconds(43_200))) : Optional.empty(),
                known ? Optional.of(at()) : Optional.empty(),
                random.nextBoolean() ? STAGES : List.of(Stage.EGG, Stage.POSTEMBRYO, Stage.INSTAR2),
                27,
                random.nextInt(5) == 0 ? Optional.empty() : Optional.of(timing()));
    }

    private Timing timing() {
        List<RateForm> forms = List.of(
                new RateForm.Linear(11.1),
                new RateForm.Briere1(11, 38.5),
                new RateForm.Lactin2(0.003, 45.1, 2.5, -1.02),
                new RateForm.Table(List.of(new RateForm.Point(20, 0.4), new RateForm.Point(27, 1))));
        return new Timing(
                Map.of(Stage.POSTEMBRYO, 30.25, Stage.INSTAR1, 46.0, Stage.INSTAR2, 72.125),
                0.12,
                forms.get(random.nextInt(forms.size())));
    }

    private List<Stay> stays() {
        Span forGood = new Span(START, Optional.empty());
        return List.of(
                new Stay("INC-1", ContainerKind.INCUBATOR, Optional.empty(), forGood),
                new Stay("BOX-" + code, ContainerKind.BOX, Optional.of("INC-1"), forGood),
                new Stay("A1", ContainerKind.TRAY, Optional.of("BOX-" + code), span()),
                new Stay("A1", ContainerKind.TRAY, Optional.of("INC-1"), span()));
    }

    private Extremes extremes() {
        Instant from = at();
        double lowest = random.nextDouble(18, 27);
        boolean humid = random.nextBoolean();
        return new Extremes(
                random.nextBoolean() ? "INC-1" : "A1",
                from,
                from.plus(Duration.ofHours(1 + random.nextInt(48))),
                lowest,
                lowest + random.nextDouble(9),
                humid ? 40 : Double.NaN,
                humid ? 40 + random.nextDouble(60) : Double.NaN);
    }

    private Check check() {
        Map<Stage, Look> looks = new EnumMap<>(Stage.class);
        List<Look> choices = List.of(
                new Look.Full(random.nextInt(300)),
                new Look.Sample(random.nextInt(20), 20),
                new Look.Seen(),
                new Look.None(),
                new Look.NotLooked());
        STAGES.forEach(stage -> looks.put(stage, choices.get(random.nextInt(choices.size()))));
        return new Check(id(), "A" + (1 + random.nextInt(3)), at(), looks);
    }

    static ReadingSeries readings(Instant from, int count) {
        SplittableRandom random = new SplittableRandom(count);
        ReadingSeries.Builder series = new ReadingSeries.Builder();
        Instant at = from;
        for (int i = 0; i < count; i++) {
            at = at.plusMillis(60_000 + random.nextInt(-50, 50));
            boolean fault = random.nextInt(40) == 0;
            series.add(new Reading(
                    at,
                    fault ? Double.NaN : Math.round(2700 + 100 * Math.sin(i / 99.0)) / 100.0,
                    random.nextInt(30) == 0 ? Double.NaN : 70 + random.nextInt(200) / 10.0,
                    fault ? Quality.FAULT : random.nextInt(50) == 0 ? Quality.SUSPECT : Quality.GOOD));
        }
        return series.build();
    }

    private Span span() {
        Instant from = at();
        return new Span(from, random.nextBoolean() ? Optional.empty() : Optional.of(from.plus(Duration.ofDays(3))));
    }

    private Instant at() {
        return START.plusNanos(random.nextLong(Duration.ofDays(90).toNanos()));
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
