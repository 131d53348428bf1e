/** Where the program starts: the command line, and every part put together by hand. */
@NullMarked
package org.moultwright.boot;

import org.jspecify.annotations.NullMarked;
