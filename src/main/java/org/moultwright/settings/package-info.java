/** What a keeper has chosen, and the file it is kept in. */
@NullMarked
package org.moultwright.settings;

import org.jspecify.annotations.NullMarked;
