package org.moultwright.store.climate;

import java.util.List;
import org.moultwright.domain.Calibration;
import org.moultwright.domain.DisplayNote;
import org.moultwright.domain.Extremes;
import org.moultwright.domain.ProbeStay;
import org.moultwright.store.sql.Transactions;
import org.moultwright.workflow.ClimateBook;

/** What is written down of the room's instruments, in H2. */
public final class H2ClimateBook implements ClimateBook {
    private final Transactions transactions;
    private final CalibrationTable calibrations = new CalibrationTable();
    private final DisplayTable displays = new DisplayTable();
    private final ExtremesTable extremes = new ExtremesTable();
    private final PlacingTable placings = new PlacingTable();

    public H2ClimateBook(Transactions transactions) {
        this.transactions = transactions;
    }

    @Override
    public List<Calibration> calibrations() {
        return transactions.read(calibrations::standing);
    }

    @Override
    public List<DisplayNote> displays() {
        return transactions.read(displays::standing);
    }

    @Override
    public List<Extremes> extremes() {
        return transactions.read(extremes::ofRoom);
    }

    @Override
    public List<ProbeStay> placings() {
        return transactions.read(placings::standing);
    }
}
