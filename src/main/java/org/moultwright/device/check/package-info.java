/** Bytes as hexadecimal digits, and check values over them. */
@NullMarked
package org.moultwright.device.check;

import org.jspecify.annotations.NullMarked;
