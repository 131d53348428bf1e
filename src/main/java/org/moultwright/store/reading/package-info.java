/** Readings packed by the hour, and the log made of them. */
@NullMarked
package org.moultwright.store.reading;

import org.jspecify.annotations.NullMarked;
