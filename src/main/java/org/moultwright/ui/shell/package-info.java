/** The frame all screens stand in: the rail, the top line, the keys. Screens see it; it sees no screen. */
@NullMarked
package org.moultwright.ui.shell;

import org.jspecify.annotations.NullMarked;
