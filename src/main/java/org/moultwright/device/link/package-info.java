/** A wire kept alive: opened, listened to, lost, tried again. */
@NullMarked
package org.moultwright.device.link;

import org.jspecify.annotations.NullMarked;
