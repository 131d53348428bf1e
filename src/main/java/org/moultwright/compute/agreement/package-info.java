/** Whether two instruments say the same: a display beside a probe, one pair of readings or many. */
@NullMarked
package org.moultwright.compute.agreement;

import org.jspecify.annotations.NullMarked;
