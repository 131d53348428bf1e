/** What a keeper plans by the forecasts: separating, pots, and when to order what. */
@NullMarked
package org.moultwright.compute.plan;

import org.jspecify.annotations.NullMarked;
