/** What the probes say, now and over the days, and probes on a serial line. */
@NullMarked
package org.moultwright.ui.climate;

import org.jspecify.annotations.NullMarked;
