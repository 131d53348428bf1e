/** Sheets of labels by their dimensions, and where on them the labels of a job go. */
@NullMarked
package org.moultwright.domain.label;

import org.jspecify.annotations.NullMarked;
