/** Values into readings: what may be trusted, and what speaks against the rest. */
@NullMarked
package org.moultwright.device.quality;

import org.jspecify.annotations.NullMarked;
