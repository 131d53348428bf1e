/** The forecasts made, in H2. */
@NullMarked
package org.moultwright.store.forecast;

import org.jspecify.annotations.NullMarked;
