/** Charts that paint themselves: plain values in, pictures and words out. They know no screen. */
@NullMarked
package org.moultwright.ui.chart;

import org.jspecify.annotations.NullMarked;
