/** What a probe's error is, how sure that is, and what it makes of readings long kept. */
@NullMarked
package org.moultwright.compute.calibration;

import org.jspecify.annotations.NullMarked;
