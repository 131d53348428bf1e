package org.moultwright.workflow;

import java.time.Instant;
import org.moultwright.domain.label.LabelSheet;
import org.moultwright.domain.label.PrintShift;

/**
 * A page that shows how far a printer is off for a sheet of labels.
 *
 * @param shift what the printer is shifted by so far
 * @param madeAt the time the document bears
 */
public record CalibrationPage(LabelSheet sheet, PrintShift shift, Instant madeAt) {}
