/** How fast animals develop at a temperature, and how far along a record of temperatures. */
@NullMarked
package org.moultwright.compute.rate;

import org.jspecify.annotations.NullMarked;
