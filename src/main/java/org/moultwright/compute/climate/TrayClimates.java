package org.moultwright.compute.climate;

import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.moultwright.domain.Account;
import org.moultwright.domain.BroodRecord;

/**
 * The temperatures lived in the trays of one brood, up to an instant, from the record as far as it was known
 * then. Trays that always stood together share one. Not safe to share between threads.
 */
public final class TrayClimates {
    private final BroodRecord record;
    private final Instant origin;
    private final Instant end;
    private final Measurements measurements;
    private final Nominals nominals;
    private final Map<List<Residence>, LivedTemperature> byResidence = new HashMap<>();

    public TrayClimates(BroodRecord record, Instant until) {
        this.record = record;
        this.origin = AgeOrigin.of(record).map(AgeOrigin::at).orElse(until);
        this.end = origin.isAfter(until) ? origin : until;
        this.measurements = new Measurements(record, until);
        this.nominals = new Nominals(record);
    }

    /** The temperature lived in a tray. */
    public LivedTemperature of(String tray) {
        Whereabouts whereabouts = new Whereabouts(record, tray);
        List<Residence> residences = whereabouts.residences(origin.toEpochMilli(), end.toEpochMilli() + 1);
        return byResidence.computeIfAbsent(whereabouts.withoutTray(residences), unseen -> lived(whereabouts));
    }

    /**
     * The temperature lived in a sac nobody has opened: where a container named {@code sac} stands, or one named after
     * the brood.
     */
    public LivedTemperature ofSac() {
        String code = record.brood().code();
        boolean isUnderCode = !isKnown(Account.SAC.code()) && isKnown(code);
        return of(isUnderCode ? code : Account.SAC.code());
    }

    private boolean isKnown(String container) {
        return record.stays().stream().anyMatch(stay -> stay.container().equals(container))
                || record.probeStays().stream()
                        .anyMatch(stay -> stay.container().equals(container))
                || record.setPoints().stream()
                        .anyMatch(point -> point.container().equals(container));
    }

    private LivedTemperature lived(Whereabouts whereabouts) {
        long endMillis = end.toEpochMilli();
        ResidualsOfPlaces residuals = new ResidualsOfPlaces(measurements, whereabouts, nominals, endMillis);
        List<Stretch> stretches = measurements.over(whereabouts.residences(origin.toEpochMilli(), endMillis));
        Place last = whereabouts.residences(endMillis, endMillis + 1).get(0).place();
        Nominal lastNominal = nominals.at(last, endMillis);
        return new LivedTemperature(
                new GapFill(nominals, residuals).fill(stretches),
                origin,
                end,
                lastNominal,
                residuals.of(last, lastNominal.container()));
    }
}
