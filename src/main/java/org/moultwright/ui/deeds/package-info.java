/** What was written down last, deed by deed, to be taken back. */
@NullMarked
package org.moultwright.ui.deeds;

import org.jspecify.annotations.NullMarked;
