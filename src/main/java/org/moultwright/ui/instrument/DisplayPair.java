package org.moultwright.ui.instrument;

import org.moultwright.compute.agreement.DisplayCheck;
import org.moultwright.domain.DisplayNote;

/** A display as it was read off, beside what the probe there measured. */
record DisplayPair(DisplayNote note, DisplayCheck check) {}
