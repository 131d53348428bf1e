/** Puts what a screen shows on paper, and into a PDF. */
@NullMarked
package org.moultwright.ui.print;

import org.jspecify.annotations.NullMarked;
