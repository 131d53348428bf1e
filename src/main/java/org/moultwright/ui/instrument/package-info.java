/** The pages on which a probe is calibrated and a display is held against it, opened from the climate screen. */
@NullMarked
package org.moultwright.ui.instrument;

import org.jspecify.annotations.NullMarked;
