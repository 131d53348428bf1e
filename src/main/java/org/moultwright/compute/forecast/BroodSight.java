package org.moultwright.compute.forecast;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.IntStream;
import org.moultwright.compute.climate.AgeOrigin;
import org.moultwright.compute.climate.LivedTemperature;
import org.moultwright.compute.climate.TrayClimates;
import org.moultwright.compute.climate.WarmDays;
import org.moultwright.compute.rate.RateCurve;
import org.moultwright.compute.stage.TrayHistory;
import org.moultwright.domain.Account;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.Cause;
import org.moultwright.domain.Ledger;
import org.moultwright.domain.LedgerEntry;
import org.moultwright.domain.Stage;

/**
 * What can be seen of a brood at an instant: each tray's warm-days and history.
 *
 * @param record what was written by then
 * @param asOf the instant
 * @param origin where ages begin
 * @param startingAge how old the animals were there
 * @param boundaries the stages whose entering is of interest
 * @param rate development per day, 1 at the reference temperature
 * @param lived warm-days by tray
 * @param trays histories by tray
 * @param isUnopened whether the only tray stands for a sac nobody has opened, whose laying is known
 */
record BroodSight(
        BroodRecord record,
        Instant asOf,
        AgeOrigin origin,
        StartingAge startingAge,
        List<Stage> boundaries,
        RateCurve rate,
        List<WarmDays> lived,
        List<TrayHistory> trays,
        boolean isUnopened) {

    /** Stands where a tray's code is asked for and shown to nobody. */
    private static final String SAC = "the sac";

    /** A brood as it stood at an instant; empty where nothing about it has a date, or none by then. */
    static Optional<BroodSight> of(BroodRecord whole, Instant asOf, List<Stage> boundaries, Belief belief) {
        BroodRecord known = whole.until(asOf);
        return AgeOrigin.of(known)
                .filter(found -> !found.at().isAfter(asOf))
                .map(origin -> of(known, asOf, origin, boundaries, belief));
    }

    private static BroodSight of(
            BroodRecord record, Instant asOf, AgeOrigin origin, List<Stage> boundaries, Belief belief) {
        StartingAge start = StartingAge.of(record, origin, boundaries, belief.medianWarmDays());
        RateCurve rate =
                belief.rateCurve(record.brood().referenceTemperatureCelsius()).tabulated();
        TrayClimates climates = new TrayClimates(record, asOf);
        Map<LivedTemperature, WarmDays> warmDaysOf = new HashMap<>();
        List<WarmDays> lived = new ArrayList<>();
        List<TrayHistory> trays = new ArrayList<>();
        List<String> used = TrayHistory.traysOf(record);
        boolean isUnopened = used.isEmpty() && origin.isLaying();
        if (isUnopened) {
            lived.add(WarmDays.of(climates.ofSac(), rate));
            trays.add(unopened(record, asOf, origin, boundaries));
        }
        for (String tray : used) {
            WarmDays warmDays =
                    warmDaysOf.computeIfAbsent(climates.of(tray), temperature -> WarmDays.of(temperature, rate));
            lived.add(warmDays);
            trays.add(TrayHistory.of(
                    record,
                    tray,
                    boundaries,
                    asOf,
                    at -> at.isBefore(origin.at()) ? 0 : start.warmDays() + warmDays.at(at)));
        }
        return new BroodSight(
                record, asOf, origin, start, boundaries, rate, List.copyOf(lived), List.copyOf(trays), isUnopened);
    }

    /** As if it had been opened the moment it was laid, and nobody had looked since. */
    private static TrayHistory unopened(BroodRecord record, Instant asOf, AgeOrigin origin, List<Stage> boundaries) {
        LedgerEntry eggs = LedgerEntry.of(
                new UUID(0, 0),
                origin.at(),
                Account.SAC,
                Account.tray(SAC),
                Stage.EGG,
                SacForecast.EGGS_SUPPOSED,
                Cause.OPENED);
        BroodRecord supposed = BroodRecord.of(record.brood()).with(Ledger.of(List.of(eggs)));
        return TrayHistory.of(supposed, SAC, boundaries, asOf, at -> 0);
    }

    /** The trays that ever held an animal, by index. */
    List<Integer> usableTrays() {
        List<Integer> usable = new ArrayList<>();
        for (int i = 0; i < trays.size(); i++) {
            if (Math.round(trays.get(i).animals()) > 0) {
                usable.add(i);
            }
        }
        return usable;
    }

    /** Age of the animals of a tray now, in warm-days. */
    double ageOf(int tray) {
        return startingAge.warmDays() + lived.get(tray).total();
    }

    /** Mean age over the trays, in warm-days; 0 without any. */
    double meanAge() {
        return IntStream.range(0, lived.size())
                .mapToDouble(this::ageOf)
                .average()
                .orElse(0);
    }

    /** Mean share of the age, over the trays, whose temperature was not measured. */
    double meanGapFraction() {
        return lived.stream()
                .mapToDouble(warmDays -> warmDays.temperature().gapFraction())
                .average()
                .orElse(0);
    }

    /** Standard uncertainty of the log of all ages that comes from the temperature. */
    double scaleSd() {
        return lived.stream()
                .filter(warmDays -> warmDays.total() > 0)
                .mapToDouble(warmDays -> warmDays.sd(origin.at(), asOf) / warmDays.total())
                .average()
                .orElse(0);
    }

    /** The histories of the trays that ever held an animal. */
    List<TrayHistory> usableHistories() {
        return usableTrays().stream().map(trays::get).toList();
    }
}
