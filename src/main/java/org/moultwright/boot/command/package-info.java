/** The commands without a window: each answers on standard output and tells what is at fault on standard error. */
@NullMarked
package org.moultwright.boot.command;

import org.jspecify.annotations.NullMarked;
