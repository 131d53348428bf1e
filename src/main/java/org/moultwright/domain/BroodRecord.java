package org.moultwright.domain;

import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Function;

/**
 * Everything written down about one brood.
 *
 * @param brood the brood itself
 * @param ledger where its animals are
 * @param checks what was seen, in order of time; withdrawn ones are left out
 * @param stays where the containers that matter to it stood
 * @param probeStays which probe measured what
 * @param setPoints what containers were set to
 * @param readings by probe code
 * @param mould mould found
 * @param care things done
 * @param pots pots its animals went into
 * @param runUp what led to the sac
 * @param extremes what thermometers that remember their lowest and highest told of containers
 * @param potEvents what happened to the animals in pots
 * @param photos photos of its trays
 */
public record BroodRecord(
        Brood brood,
        Ledger ledger,
        List<Check> checks,
        List<Stay> stays,
        List<ProbeStay> probeStays,
        List<SetPoint> setPoints,
        Map<String, ReadingSeries> readings,
        List<MouldNote> mould,
        List<CareNote> care,
        List<Pot> pots,
        List<RunUpEvent> runUp,
        List<Extremes> extremes,
        List<PotEvent> potEvents,
        List<PhotoNote> photos) {

    public BroodRecord {
        checks = List.copyOf(checks);
        stays = List.copyOf(stays);
        probeStays = List.copyOf(probeStays);
        setPoints = List.copyOf(setPoints);
        readings = Map.copyOf(readings);
        mould = List.copyOf(mould);
        care = List.copyOf(care);
        pots = List.copyOf(pots);
        runUp = List.copyOf(runUp);
        extremes = List.copyOf(extremes);
        potEvents = List.copyOf(potEvents);
        photos = List.copyOf(photos);
    }

    /**
     * A brood around which no lowest and highest were written down, nor anything of its pots since they were filled, and
     * of which there is no photo.
     */
    public BroodRecord(
            Brood brood,
            Ledger ledger,
            List<Check> checks,
            List<Stay> stays,
            List<ProbeStay> probeStays,
            List<SetPoint> setPoints,
            Map<String, ReadingSeries> readings,
            List<MouldNote> mould,
            List<CareNote> care,
            List<Pot> pots,
            List<RunUpEvent> runUp) {
        this(
                brood,
                ledger,
                checks,
                stays,
                probeStays,
                setPoints,
                readings,
                mould,
                care,
                pots,
                runUp,
                List.of(),
                List.of(),
                List.of());
    }

    /** A brood of which nothing is written yet. */
    public static BroodRecord of(Brood brood) {
        return new BroodRecord(
                brood,
                Ledger.EMPTY,
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                Map.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of());
    }

    /** This record with other facts of the brood itself. */
    public BroodRecord withBrood(Brood other) {
        return with(parts -> parts.brood = other);
    }

    /** This record with another ledger. */
    public BroodRecord with(Ledger other) {
        return with(parts -> parts.ledger = other);
    }

    /** This record with other readings. */
    public BroodRecord withReadings(Map<String, ReadingSeries> others) {
        return with(parts -> parts.readings = others);
    }

    /** This record with other places: where containers and probes were, and what containers were set to. */
    public BroodRecord withPlaces(List<Stay> otherStays, List<ProbeStay> otherProbeStays, List<SetPoint> others) {
        return with(parts -> {
            parts.stays = otherStays;
            parts.probeStays = otherProbeStays;
            parts.setPoints = others;
        });
    }

    /** This record with other probe stays. */
    public BroodRecord withProbeStays(List<ProbeStay> others) {
        return with(parts -> parts.probeStays = others);
    }

    /** This record with other lowest and highest values. */
    public BroodRecord withExtremes(List<Extremes> others) {
        return with(parts -> parts.extremes = others);
    }

    /** This record with other events of its pots. */
    public BroodRecord withPotEvents(List<PotEvent> others) {
        return with(parts -> parts.potEvents = others);
    }

    /** This record with other photos. */
    public BroodRecord withPhotos(List<PhotoNote> others) {
        return with(parts -> parts.photos = others);
    }

    /**
     * What was written of this brood up to and including an instant: later entries, looks, notes, photos, pots, events of
     * pots, readings, stays and lowest and highest values are left out, and a span that ended later counts as still open.
     */
    public BroodRecord until(Instant instant) {
        Map<String, ReadingSeries> known = new HashMap<>();
        readings.forEach((probe, series) -> known.put(probe, series.until(instant)));
        return new BroodRecord(
                brood,
                ledger.at(instant),
                upTo(instant, checks, Check::at),
                stays.stream()
                        .filter(stay -> !stay.span().from().isAfter(instant))
                        .map(stay -> new Stay(
                                stay.container(),
                                stay.kind(),
                                stay.inside(),
                                stay.span().until(instant)))
                        .toList(),
                probeStays.stream()
                        .filter(stay -> !stay.span().from().isAfter(instant))
                        .map(stay -> stay.with(stay.span().until(instant)))
                        .toList(),
                setPoints.stream()
                        .filter(point -> !point.span().from().isAfter(instant))
                        .map(point -> new SetPoint(
                                point.container(),
                                point.span().until(instant),
                                point.temperatureCelsius(),
                                point.humidityPercent()))
                        .toList(),
                known,
                upTo(instant, mould, MouldNote::at),
                upTo(instant, care, CareNote::at),
                upTo(instant, pots, Pot::potted),
                upTo(instant, runUp, RunUpEvent::at),
                upTo(instant, extremes, Extremes::to),
                upTo(instant, potEvents, PotEvent::at),
                upTo(instant, photos, PhotoNote::at));
    }

    private BroodRecord with(Consumer<Parts> change) {
        Parts parts = new Parts(this);
        change.accept(parts);
        return parts.record();
    }

    private static <T> List<T> upTo(Instant instant, List<T> rows, Function<T, Instant> time) {
        return rows.stream().filter(row -> !time.apply(row).isAfter(instant)).toList();
    }

    /** The parts of a record while one or another is replaced. */
    private static final class Parts {
        private Brood brood;
        private Ledger ledger;
        private List<Check> checks;
        private List<Stay> stays;
        private List<ProbeStay> probeStays;
        private List<SetPoint> setPoints;
        private Map<String, ReadingSeries> readings;
        private List<MouldNote> mould;
        private List<CareNote> care;
        private List<Pot> pots;
        private List<RunUpEvent> runUp;
        private List<Extremes> extremes;
        private List<PotEvent> potEvents;
        private List<PhotoNote> photos;

        Parts(BroodRecord from) {
            brood = from.brood;
            ledger = from.ledger;
            checks = from.checks;
            stays = from.stays;
            probeStays = from.probeStays;
            setPoints = from.setPoints;
            readings = from.readings;
            mould = from.mould;
            care = from.care;
            pots = from.pots;
            runUp = from.runUp;
            extremes = from.extremes;
            potEvents = from.potEvents;
            photos = from.photos;
        }

        BroodRecord record() {
            return new BroodRecord(
                    brood,
                    ledger,
                    checks,
                    stays,
                    probeStays,
                    setPoints,
                    readings,
                    mould,
                    care,
                    pots,
                    runUp,
                    extremes,
                    potEvents,
                    photos);
        }
    }
}
