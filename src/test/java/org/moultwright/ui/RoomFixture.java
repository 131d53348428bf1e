package org.moultwright.ui;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.UUID;
import java.util.stream.IntStream;
import org.moultwright.compute.forecast.BroodForecast;
import org.moultwright.compute.forecast.Composition;
import org.moultwright.compute.forecast.CountInterval;
import org.moultwright.compute.forecast.ForecastNote;
import org.moultwright.compute.forecast.InstantInterval;
import org.moultwright.compute.forecast.MoultForecast;
import org.moultwright.compute.forecast.PriorSource;
import org.moultwright.compute.forecast.TrayForecast;
import org.moultwright.domain.Account;
import org.moultwright.domain.Brood;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.Cause;
import org.moultwright.domain.Check;
import org.moultwright.domain.ContainerKind;
import org.moultwright.domain.InstantRange;
import org.moultwright.domain.Ledger;
import org.moultwright.domain.LedgerEntry;
import org.moultwright.domain.Look;
import org.moultwright.domain.MouldNote;
import org.moultwright.domain.ProbeStay;
import org.moultwright.domain.Quality;
import org.moultwright.domain.Reading;
import org.moultwright.domain.ReadingSeries;
import org.moultwright.domain.SetPoint;
import org.moultwright.domain.Span;
import org.moultwright.domain.Stage;
import org.moultwright.domain.Stay;
import org.moultwright.domain.TrayContents;
import org.moultwright.workflow.BroodView;
import org.moultwright.workflow.RoomView;
import org.moultwright.workflow.TrayView;

/** An invented room for tests of screens: broods with checks, losses, pottings, readings and forecasts. */
public final class RoomFixture {
    public static final ZoneId ZONE = ZoneId.of("Europe/Lisbon");
    public static final Instant NOW = evening("2026-05-03");
    private static final long SEED = 20260503;

    private final List<LedgerEntry> entries = new ArrayList<>();
    private final List<Check> checks = new ArrayList<>();
    private int serial;

    private RoomFixture() {}

    /** Three broods on the third of May: one becoming slings, one of nymphs, one of eggs with legs. */
    public static RoomView room() {
        return room(List.of(broodA(), broodB(), broodC()));
    }

    public static RoomView room(List<BroodView> broods) {
        return new RoomView(
                NOW,
                broods,
                Map.of(
                        "P-1", new Reading(NOW.minusSeconds(40), 27.2, 74, Quality.GOOD),
                        "P-2", new Reading(NOW.minusSeconds(12 * 60), 27.0, 76, Quality.GOOD)),
                Optional.empty());
    }

    /** Many broods, all alike but for their codes. */
    public static RoomView crowded(int count) {
        BroodView one = broodA();
        return room(IntStream.rangeClosed(1, count)
                .mapToObj(i ->
                        new BroodView(renamed(one.record(), "CC-26-%02d".formatted(i)), one.trays(), one.forecast()))
                .toList());
    }

    public static BroodView broodA() {
        RoomFixture book = new RoomFixture();
        book.put("A1", "2026-03-25", Stage.EGG, 45, Stage.POSTEMBRYO, 15);
        book.put("A2", "2026-03-25", Stage.EGG, 46, Stage.POSTEMBRYO, 12);
        book.look("A1", "2026-03-25", 43, 15, 0, 0, 0, 2, Cause.INFERTILE);
        book.look("A1", "2026-03-28", 0, 57, 0, 0, 0, 1, Cause.INFERTILE);
        book.look("A1", "2026-04-09", 0, 56, 1, 0, 0, 0, Cause.UNKNOWN);
        book.look("A1", "2026-04-11", 0, 34, 23, 0, 0, 0, Cause.UNKNOWN);
        book.look("A1", "2026-04-13", 0, 1, 56, 0, 0, 0, Cause.UNKNOWN);
        book.look("A1", "2026-04-20", 0, 0, 56, 0, 0, 1, Cause.FAILED_MOULT);
        book.look("A1", "2026-04-28", 0, 0, 51, 5, 0, 0, Cause.UNKNOWN);
        book.look("A1", "2026-05-01", 0, 0, 38, 18, 0, 0, Cause.UNKNOWN);
        book.look("A1", "2026-05-03", 0, 0, 26, 28, 2, 0, Cause.UNKNOWN);
        book.look("A2", "2026-03-28", 2, 55, 0, 0, 0, 1, Cause.DESICCATED);
        book.look("A2", "2026-03-31", 1, 55, 0, 0, 0, 1, Cause.INFERTILE);
        book.look("A2", "2026-04-09", 1, 52, 0, 0, 0, 3, Cause.DROWNED);
        book.look("A2", "2026-04-11", 0, 35, 17, 0, 0, 1, Cause.INFERTILE);
        book.look("A2", "2026-04-13", 0, 3, 49, 0, 0, 0, Cause.UNKNOWN);
        book.look("A2", "2026-04-24", 0, 0, 50, 0, 0, 2, Cause.FAILED_MOULT);
        book.look("A2", "2026-05-01", 0, 0, 41, 9, 0, 0, Cause.UNKNOWN);
        book.look("A2", "2026-05-03", 0, 0, 30, 19, 1, 0, Cause.UNKNOWN);
        return book.view(
                "CC-26-A",
                "2026-02-27",
                "2026-03-25",
                new CountInterval(103, 105, 106),
                List.of(book.slings("A1", 0, 3, 6.5, 2), book.slings("A2", 0, 3.5, 6.8, 1)));
    }

    public static BroodView broodB() {
        return broodB(0);
    }

    /** The same, some of which are known to be slings, potted as they came, though no look ever found one. */
    public static BroodView broodBUnseen() {
        return broodB(1);
    }

    private static BroodView broodB(int there) {
        RoomFixture book = new RoomFixture();
        book.put("B1", "2026-03-22", Stage.EGG, 94, Stage.POSTEMBRYO, 0);
        book.look("B1", "2026-03-22", 83, 0, 0, 0, 0, 11, Cause.INFERTILE);
        book.look("B1", "2026-03-28", 69, 0, 0, 0, 0, 14, Cause.MOULD);
        book.look("B1", "2026-04-02", 0, 66, 0, 0, 0, 3, Cause.UNKNOWN);
        book.look("B1", "2026-04-13", 0, 62, 0, 0, 0, 4, Cause.UNKNOWN);
        book.look("B1", "2026-04-16", 0, 38, 22, 0, 0, 2, Cause.UNKNOWN);
        book.look("B1", "2026-04-18", 0, 0, 59, 0, 0, 1, Cause.FAILED_MOULT);
        book.look("B1", "2026-04-28", 0, 0, 59, 0, 0, 0, Cause.UNKNOWN);
        return book.view(
                "CC-26-B",
                "2026-03-04",
                "2026-03-22",
                new CountInterval(55, 57, 59),
                List.of(book.slings("B1", 5, 8, 11, there)));
    }

    public static BroodView broodC() {
        RoomFixture book = new RoomFixture();
        book.put("C1", "2026-04-17", Stage.EGG, 51, Stage.POSTEMBRYO, 20);
        book.look("C1", "2026-04-19", 0, 68, 0, 0, 0, 3, Cause.INFERTILE);
        book.look("C1", "2026-04-28", 0, 66, 0, 0, 0, 2, Cause.UNKNOWN);
        book.look("C1", "2026-05-03", 0, 52, 13, 0, 0, 1, Cause.UNKNOWN);
        return book.view(
                "CC-26-C",
                "2026-03-20",
                "2026-04-17",
                new CountInterval(56, 60, 63),
                List.of(book.slings("C1", 21, 24, 27, 0)));
    }

    /** A brood with nothing to go on. */
    public static BroodView fresh() {
        RoomFixture book = new RoomFixture();
        book.put("D1", "2026-05-03", Stage.EGG, 40, Stage.POSTEMBRYO, 0);
        BroodRecord record = book.record("CC-26-D", "2026-04-10", "2026-05-03");
        BroodForecast forecast = new BroodForecast(
                "CC-26-D",
                NOW,
                0,
                1,
                PriorSource.GENERAL,
                0,
                List.of(new TrayForecast("D1", 0, 40, List.of(), List.of())),
                Stage.INSTAR2,
                Optional.empty(),
                List.of(new ForecastNote(ForecastNote.Kind.TOO_LITTLE_TO_GO_ON, "D1", Double.NaN)));
        return new BroodView(record, List.of(book.tray(record, "D1", forecast)), Optional.of(forecast));
    }

    /** A brood whose box is too cold for it. */
    public static BroodView cold() {
        RoomFixture book = new RoomFixture();
        book.put("E1", "2026-04-17", Stage.POSTEMBRYO, 40, Stage.EGG, 0);
        return book.view(
                "CC-26-E",
                "2026-03-20",
                "2026-04-17",
                new CountInterval(20, 25, 30),
                List.of(book.slings("E1", 900, 1000, 1100, 0)));
    }

    /** Five-minute readings of ten days with a ripple, one spike and one silence. */
    public static ReadingSeries readings() {
        Random random = new Random(SEED);
        ReadingSeries.Builder series = new ReadingSeries.Builder();
        Instant start = evening("2026-04-03");
        Instant silent = Instant.parse("2026-04-29T20:00:00Z");
        for (Instant at = start; at.isBefore(NOW); at = at.plus(Duration.ofMinutes(5))) {
            if (at.isAfter(silent) && at.isBefore(silent.plus(Duration.ofMinutes(630)))) {
                continue;
            }
            double hours = Duration.between(start, at).toMinutes() / 60.0;
            double sinceSpike =
                    Duration.between(Instant.parse("2026-04-26T18:00:00Z"), at).toMinutes() / 60.0;
            double spike = Math.max(0, 2.4 - Math.abs(sinceSpike));
            double value = 27.2
                    + 0.25 * Math.sin(hours / 80 * 60 * 2 * Math.PI)
                    + 0.2 * Math.sin(hours / 24 * 2 * Math.PI)
                    + 0.05 * random.nextGaussian()
                    + spike;
            series.add(at.toEpochMilli(), Math.round(value * 10) / 10.0, 74, Quality.GOOD);
        }
        return series.build();
    }

    public static Instant evening(String day) {
        return LocalDate.parse(day).atTime(20, 41).atZone(ZONE).toInstant();
    }

    private UUID id() {
        return new UUID(SEED, serial++);
    }

    private void put(String tray, String day, Stage first, int count, Stage second, int further) {
        Instant at = evening(day).minus(Duration.ofHours(2));
        entries.add(LedgerEntry.of(id(), at, Account.SAC, Account.tray(tray), first, count, Cause.OPENED));
        if (further > 0) {
            entries.add(LedgerEntry.of(id(), at, Account.SAC, Account.tray(tray), second, further, Cause.OPENED));
        }
    }

    private void look(
            String tray, String day, int eggs, int legs, int nymphs, int dark, int slings, int lost, Cause cause) {
        Instant at = evening(day);
        if (lost > 0) {
            Account to = cause.equals(Cause.INFERTILE) ? Account.INFERTILE : Account.DEAD;
            Stage stage = eggs > 0 ? Stage.EGG : legs > 0 ? Stage.POSTEMBRYO : Stage.INSTAR1;
            entries.add(LedgerEntry.of(id(), at, Account.tray(tray), to, stage, lost, cause));
        }
        Map<Stage, Look> looks = new EnumMap<>(Stage.class);
        looks.put(Stage.EGG, new Look.Full(eggs));
        looks.put(Stage.POSTEMBRYO, new Look.Full(legs));
        looks.put(Stage.INSTAR1, new Look.Full(nymphs));
        looks.put(Stage.DARKENED, new Look.Full(dark));
        looks.put(Stage.INSTAR2, new Look.Full(slings));
        checks.add(new Check(id(), tray, at, looks));
    }

    private BroodRecord record(String code, String laid, String pulled) {
        Instant laying = evening(laid);
        Brood brood = new Brood(
                code,
                "Chromatopelma cyaneopubescens",
                ZONE,
                Optional.of(new InstantRange(laying.minus(Duration.ofHours(6)), laying.plus(Duration.ofHours(6)))),
                Optional.of(evening(pulled).minus(Duration.ofHours(2))),
                List.of(Stage.values()),
                27,
                Optional.empty());
        Span open = new Span(evening(pulled), Optional.empty());
        List<Stay> stays = new ArrayList<>();
        stays.add(new Stay("box 1", ContainerKind.BOX, Optional.of("INC-1"), open));
        entries.stream()
                .map(entry -> entry.to().code())
                .filter(tray -> Character.isUpperCase(tray.charAt(0)))
                .distinct()
                .forEach(tray -> stays.add(new Stay(tray, ContainerKind.TRAY, Optional.of("box 1"), open)));
        BroodRecord empty = BroodRecord.of(brood);
        Instant found = evening("2026-04-06");
        return new BroodRecord(
                brood,
                Ledger.of(entries),
                checks.stream()
                        .sorted(java.util.Comparator.comparing(Check::at))
                        .toList(),
                stays,
                List.of(new ProbeStay("P-1", "box 1", open, 0.2, 0.1)),
                List.of(
                        new SetPoint("INC-1", new Span(evening("2026-03-01"), Optional.of(found)), 27.0, Double.NaN),
                        new SetPoint("INC-1", new Span(found, Optional.empty()), 28.3, Double.NaN)),
                Map.of("P-1", readings()),
                List.of(new MouldNote(
                        id(),
                        evening("2026-04-21"),
                        stays.get(1).container(),
                        "shells",
                        "speck",
                        "shells taken out",
                        0)),
                empty.care(),
                empty.pots(),
                empty.runUp());
    }

    private BroodView view(String code, String laid, String pulled, CountInterval yield, List<TrayForecast> trays) {
        BroodRecord record = record(code, laid, pulled);
        BroodForecast forecast = new BroodForecast(
                code,
                NOW,
                62.4,
                0.03,
                PriorSource.FOLDER,
                0,
                trays,
                Stage.INSTAR2,
                Optional.of(yield),
                List.of(new ForecastNote(ForecastNote.Kind.GAPS_FILLED, "", 3)));
        List<TrayView> views =
                trays.stream().map(tray -> tray(record, tray.tray(), forecast)).toList();
        return new BroodView(record, views, Optional.of(forecast));
    }

    private TrayView tray(BroodRecord record, String tray, BroodForecast forecast) {
        return new TrayView(
                record.brood().code(),
                tray,
                "box 1, INC-1",
                record.ledger().balance(Account.tray(tray)),
                TrayContents.at(NOW, tray, record.ledger(), record.checks()).byStage(),
                Optional.empty(),
                TrayView.Due.DUE,
                forecast.tray(tray));
    }

    /** A forecast by which the animals of a tray become slings these many days from now. */
    private TrayForecast slings(String tray, double firstDays, double halfDays, double mostDays, int there) {
        int alive = entries.stream()
                .mapToInt(entry -> entry.effectOn(Account.tray(tray)))
                .sum();
        List<MoultForecast> moults = List.of(
                new MoultForecast(
                        Stage.DARKENED,
                        there,
                        window(firstDays - 5, 1.5),
                        window(halfDays - 5, 1.7),
                        window(mostDays - 5, 2)),
                new MoultForecast(
                        Stage.INSTAR2, there, window(firstDays, 1), window(halfDays, 2), window(mostDays, 2.5)));
        List<Composition> days = new ArrayList<>();
        for (int day = 0; day <= 40; day++) {
            double share = 1 / (1 + Math.exp(-(day - halfDays) * 1.1));
            double dark = Math.max(0, 1 / (1 + Math.exp(-(day + 5 - halfDays) * 0.9)) - share);
            double living = alive * (1 - 0.001 * day);
            days.add(new Composition(
                    NOW.plus(Duration.ofDays(day)),
                    Map.of(
                            Stage.INSTAR1, exact(living * (1 - share - dark)),
                            Stage.DARKENED, exact(living * dark),
                            Stage.INSTAR2, exact(living * share)),
                    new CountInterval(living - 0.1 * day, living, Math.min(alive, living + 0.06 * day))));
        }
        return new TrayForecast(tray, 62.4, alive, moults, days);
    }

    private static CountInterval exact(double count) {
        return new CountInterval(count, count, count);
    }

    private static InstantInterval window(double middleDays, double halfWidthDays) {
        return new InstantInterval(
                days(middleDays - halfWidthDays), days(middleDays), days(middleDays + halfWidthDays));
    }

    private static Instant days(double days) {
        return NOW.atOffset(ZoneOffset.UTC)
                .plusSeconds(Math.round(days * 86_400))
                .toInstant();
    }

    private static BroodRecord renamed(BroodRecord record, String code) {
        Brood brood = record.brood();
        Brood other = new Brood(
                code,
                brood.taxon(),
                brood.zone(),
                brood.laid(),
                brood.pulled(),
                brood.stages(),
                brood.referenceTemperatureCelsius(),
                brood.timing());
        return new BroodRecord(
                other,
                record.ledger(),
                record.checks(),
                record.stays(),
                record.probeStays(),
                record.setPoints(),
                record.readings(),
                record.mould(),
                record.care(),
                record.pots(),
                record.runUp());
    }
}
