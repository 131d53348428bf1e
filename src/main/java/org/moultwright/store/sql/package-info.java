/** What every table of the store shares: how cells are written and rows are read. */
@NullMarked
package org.moultwright.store.sql;

import org.jspecify.annotations.NullMarked;
