/** The temperature the animals of a tray lived, and the warm-days it gave them. */
@NullMarked
package org.moultwright.compute.climate;

import org.jspecify.annotations.NullMarked;
