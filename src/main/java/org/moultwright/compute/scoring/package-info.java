/** Scores forecasts when the truth is known. */
@NullMarked
package org.moultwright.compute.scoring;

import org.jspecify.annotations.NullMarked;
