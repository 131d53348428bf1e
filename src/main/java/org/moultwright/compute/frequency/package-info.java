/** The published models of stage frequency: what share of a population is in each stage as time passes. */
@NullMarked
package org.moultwright.compute.frequency;

import org.jspecify.annotations.NullMarked;
