/** Bytes into lines. */
@NullMarked
package org.moultwright.device.line;

import org.jspecify.annotations.NullMarked;
