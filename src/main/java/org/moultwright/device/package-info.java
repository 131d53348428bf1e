/** Probes on a wire: port, bytes, lines, profile, quality, reading. What is common to these. */
@NullMarked
package org.moultwright.device;

import org.jspecify.annotations.NullMarked;
