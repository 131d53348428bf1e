/** The daily round: one tray after another, counted, cared for and balanced, by keyboard alone. */
@NullMarked
package org.moultwright.ui.round;

import org.jspecify.annotations.NullMarked;
