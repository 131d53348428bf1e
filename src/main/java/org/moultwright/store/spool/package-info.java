/** What a logger leaves beside a store that another program has open, and how it is taken in. */
@NullMarked
package org.moultwright.store.spool;

import org.jspecify.annotations.NullMarked;
