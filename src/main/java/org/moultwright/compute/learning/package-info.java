/** Learns from completed broods what to believe of the next one. */
@org.jspecify.annotations.NullMarked
package org.moultwright.compute.learning;
