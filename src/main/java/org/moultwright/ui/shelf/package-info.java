/** The shelf: what stands in what, who lives there, what the air is like, and moving it all about. */
@NullMarked
package org.moultwright.ui.shelf;

import org.jspecify.annotations.NullMarked;
