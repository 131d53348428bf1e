/** Survival without a model: what lifetimes seen in full, in part or between two looks say by themselves. */
@NullMarked
package org.moultwright.compute.survival;

import org.jspecify.annotations.NullMarked;
