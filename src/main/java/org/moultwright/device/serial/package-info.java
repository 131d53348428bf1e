/** Serial ports of this machine. */
@NullMarked
package org.moultwright.device.serial;

import org.jspecify.annotations.NullMarked;
