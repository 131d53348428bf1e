/** Moist air, and whether its water settles on a wall. */
@NullMarked
package org.moultwright.compute.psychro;

import org.jspecify.annotations.NullMarked;
