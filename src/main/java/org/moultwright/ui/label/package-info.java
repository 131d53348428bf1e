/** Labels on sheets and rolls, for every screen that prints some: which sheet, how it looks, where it goes. */
@NullMarked
package org.moultwright.ui.label;

import org.jspecify.annotations.NullMarked;
