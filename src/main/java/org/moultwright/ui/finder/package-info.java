/** The page on which it is found out how an unknown probe speaks, and where the keeper writes line profiles. */
@NullMarked
package org.moultwright.ui.finder;

import org.jspecify.annotations.NullMarked;
