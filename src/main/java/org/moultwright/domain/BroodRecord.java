package org.moultwright.domain;

import java.util.List;
import java.util.Map;

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
        List<RunUpEvent> runUp) {

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
}
