/** What became of a brood, read back from its record: what it held day by day, and its story. */
@NullMarked
package org.moultwright.compute.history;

import org.jspecify.annotations.NullMarked;
