/** The keeper's store: one H2 file, opened by one program at a time, never opened where it is not ours. */
@NullMarked
package org.moultwright.store;

import org.jspecify.annotations.NullMarked;
