package org.moultwright.workflow;

import java.util.List;
import org.moultwright.domain.Calibration;
import org.moultwright.domain.DisplayNote;
import org.moultwright.domain.Extremes;
import org.moultwright.domain.ProbeStay;

/**
 * What is written down of the room's instruments and climate. It is kept by deeds, like what is written of broods; rows of
 * undone deeds are left out.
 */
public interface ClimateBook {

    /** Every calibration that stands, in the order they were written down. */
    List<Calibration> calibrations();

    /** Every reading of a display that stands, in the order they were written down. */
    List<DisplayNote> displays();

    /** Every lowest and highest written at the desk that stands, in the order written. */
    List<Extremes> extremes();

    /** Every place of a probe written at the desk that stands, in the order written. */
    List<ProbeStay> placings();
}
