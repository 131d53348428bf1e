/** How many animals there are where not all were counted, and how well repeated counts agree. */
@NullMarked
package org.moultwright.compute.count;

import org.jspecify.annotations.NullMarked;
