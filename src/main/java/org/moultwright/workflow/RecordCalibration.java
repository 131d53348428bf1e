package org.moultwright.workflow;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
import org.moultwright.compute.calibration.CorrectionFit;
import org.moultwright.compute.calibration.Redressing;
import org.moultwright.domain.Calibration;
import org.moultwright.domain.CalibrationMethod;
import org.moultwright.domain.CalibrationPoint;
import org.moultwright.domain.Correction;
import org.moultwright.domain.Require;
import org.moultwright.language.Texts;

/** Writes down what was found out about a probe's error. Undone like any other deed. */
public final class RecordCalibration {
    /** How long a calibration is commonly trusted; no source. */
    public static final Duration USUAL_LIFE = Duration.ofDays(365);

    private final BroodBook book;
    private final ClimateBook climate;
    private final ReadingLog readings;
    private final InstantSource clock;
    private final Supplier<UUID> ids;

    public RecordCalibration(
            BroodBook book, ClimateBook climate, ReadingLog readings, InstantSource clock, Supplier<UUID> ids) {
        this.book = book;
        this.climate = climate;
        this.readings = readings;
        this.clock = clock;
        this.ids = ids;
    }

    /**
     * The points as the keeper took them.
     *
     * @param appliesFrom from which reading on the result holds; may lie before {@code doneAt}
     * @param life how long it is to be trusted, above 0
     */
    public record Sheet(
            String probe,
            CalibrationMethod method,
            Instant doneAt,
            Instant appliesFrom,
            Duration life,
            List<CalibrationPoint> points,
            String note) {
        public Sheet {
            Require.text("probe", probe);
            points = List.copyOf(points);
        }
    }

    /** The calibration a sheet comes to, not yet kept. */
    public Calibration draft(Sheet sheet) {
        return new Calibration(
                ids.get(),
                sheet.probe(),
                sheet.method(),
                sheet.doneAt(),
                sheet.appliesFrom(),
                sheet.doneAt().plus(sheet.life()),
                sheet.points(),
                CorrectionFit.through(sheet.method(), sheet.points()),
                sheet.note());
    }

    /**
     * What a draft would change of the readings kept so far.
     *
     * @param otherwise what the probe's readings need where no calibration applies
     */
    public Redressing changes(Calibration draft, Correction otherwise) {
        Redressing.Tally tally = Redressing.against(climate.calibrations(), otherwise, draft);
        readings.each(draft.probe(), draft.appliesFrom(), clock.instant(), tally::add);
        return tally.result();
    }

    /** Keeps a draft; it is on disk when this returns. */
    public Deed.Summary save(Calibration draft) {
        Deed.Summary summary = new Deed.Summary(
                ids.get(), Optional.empty(), clock.instant(), Texts.say("{0} calibrated", draft.probe()));
        book.keep(new Deed(summary, Optional.empty(), Deed.Content.ofRoom(List.of(draft), List.of())));
        return summary;
    }
}
