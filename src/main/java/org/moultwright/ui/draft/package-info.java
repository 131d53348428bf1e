/** Brings what is begun on a screen and not saved to the disk as it is typed. */
@NullMarked
package org.moultwright.ui.draft;

import org.jspecify.annotations.NullMarked;
