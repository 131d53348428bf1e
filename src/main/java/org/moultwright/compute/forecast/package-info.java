/** When each tray will moult and how many animals will come of it. */
@NullMarked
package org.moultwright.compute.forecast;

import org.jspecify.annotations.NullMarked;
