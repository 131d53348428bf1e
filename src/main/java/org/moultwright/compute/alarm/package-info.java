/**
 * Alarms over the climate of a container, as a machine of values: the same observations give the same alarms.
 * It reads no clock; time comes in with each observation.
 */
@NullMarked
package org.moultwright.compute.alarm;

import org.jspecify.annotations.NullMarked;
