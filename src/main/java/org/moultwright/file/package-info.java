/** Files put in their place whole or not at all, by whoever writes them. */
@NullMarked
package org.moultwright.file;

import org.jspecify.annotations.NullMarked;
