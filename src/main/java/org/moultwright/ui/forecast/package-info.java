/** When each tray moults and how many slings come of it, as lanes over the calendar and in words. */
@NullMarked
package org.moultwright.ui.forecast;

import org.jspecify.annotations.NullMarked;
