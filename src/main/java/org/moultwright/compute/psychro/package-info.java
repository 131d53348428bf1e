/** Moist air, and whether a display can be believed beside a probe. */
@NullMarked
package org.moultwright.compute.psychro;

import org.jspecify.annotations.NullMarked;
