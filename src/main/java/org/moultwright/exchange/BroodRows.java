package org.moultwright.exchange;

import java.util.List;
import java.util.Map;
import org.moultwright.domain.Brood;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.CareNote;
import org.moultwright.domain.Check;
import org.moultwright.domain.Extremes;
import org.moultwright.domain.LedgerEntry;
import org.moultwright.domain.MouldNote;
import org.moultwright.domain.PhotoNote;
import org.moultwright.domain.Pot;
import org.moultwright.domain.PotEvent;
import org.moultwright.domain.ProbeStay;
import org.moultwright.domain.Reconciliation;
import org.moultwright.domain.RunUpEvent;
import org.moultwright.domain.SetPoint;
import org.moultwright.domain.Stay;

/** The rows of all files but the readings. */
record BroodRows(
        List<Check> checks,
        List<LedgerEntry> moves,
        List<Stay> stays,
        List<ProbeStay> probeStays,
        List<SetPoint> setPoints,
        List<MouldNote> mould,
        List<CareNote> care,
        List<Pot> pots,
        List<RunUpEvent> runUp,
        List<Extremes> extremes,
        List<PotEvent> potEvents,
        List<PhotoNote> photos) {

    BroodRecord of(Brood brood, Reconciliation reconciliation) {
        return new BroodRecord(
                brood,
                reconciliation.ledger(),
                checks,
                stays,
                probeStays,
                setPoints,
                Map.of(),
                mould,
                care,
                pots,
                runUp,
                extremes,
                potEvents,
                photos);
    }
}
