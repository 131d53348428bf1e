/** The screen of the keeper's choices. */
@NullMarked
package org.moultwright.ui.settings;

import org.jspecify.annotations.NullMarked;
