/** Colours, type and shape: one palette for every control, chart and chip, in a light and a dark theme. */
@NullMarked
package org.moultwright.ui.theme;

import org.jspecify.annotations.NullMarked;
