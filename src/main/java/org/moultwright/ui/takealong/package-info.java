/** What leaves the forecast on paper or for other programs: a sitter's sheet and a calendar. */
@NullMarked
package org.moultwright.ui.takealong;

import org.jspecify.annotations.NullMarked;
