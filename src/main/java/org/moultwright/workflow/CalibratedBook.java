package org.moultwright.workflow;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.moultwright.compute.calibration.CalibratedStays;
import org.moultwright.domain.Brood;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.LessonNote;
import org.moultwright.domain.Shelf;

/**
 * The book of broods as its probes are calibrated by now: each brood's stays of probes carry the correction in
 * force and its uncertainty, so that warm-days, charts and forecasts follow a new calibration back to where it
 * applies. What is kept stays raw.
 */
public final class CalibratedBook implements BroodBook {
    private final BroodBook raw;
    private final ClimateBook climate;

    public CalibratedBook(BroodBook raw, ClimateBook climate) {
        this.raw = raw;
        this.climate = climate;
    }

    @Override
    public List<Brood> broods() {
        return raw.broods();
    }

    @Override
    public Optional<BroodRecord> find(String code) {
        return raw.find(code).map(new CalibratedStays(climate.calibrations())::dress);
    }

    @Override
    public TakenIn takeIn(BroodRecord record, ReadingSource readings) {
        return raw.takeIn(record, readings);
    }

    @Override
    public void keep(Deed deed) {
        raw.keep(deed);
    }

    @Override
    public Map<String, LessonNote> leftOut() {
        return raw.leftOut();
    }

    @Override
    public List<Deed.Summary> latestDeeds(int most) {
        return raw.latestDeeds(most);
    }

    @Override
    public Optional<Deed> deed(UUID id) {
        return raw.deed(id);
    }

    @Override
    public Shelf shelf() {
        return raw.shelf();
    }
}
