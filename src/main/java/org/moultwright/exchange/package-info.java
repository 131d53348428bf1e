/** Brood folders, format 1: reading, checking and writing the open plain-text form of one brood. */
@NullMarked
package org.moultwright.exchange;

import org.jspecify.annotations.NullMarked;
