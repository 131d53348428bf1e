/** Climate that comes by no wire: readings typed, a day's lowest and highest, files of readings. */
@NullMarked
package org.moultwright.ui.intake;

import org.jspecify.annotations.NullMarked;
