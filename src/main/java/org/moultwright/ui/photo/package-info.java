/** Photos of trays on screen: small ones in a row, one large, and those waiting to be attached. */
@NullMarked
package org.moultwright.ui.photo;

import org.jspecify.annotations.NullMarked;
