/** The potting bench: slings out of their trays, one pot, one code and one label each. */
@NullMarked
package org.moultwright.ui.potting;

import org.jspecify.annotations.NullMarked;
