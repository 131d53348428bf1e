/** Small controls all screens are built from. Each names itself to screen readers. */
@NullMarked
package org.moultwright.ui.control;

import org.jspecify.annotations.NullMarked;
