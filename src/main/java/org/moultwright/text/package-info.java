/** Words, vocabularies, and the forms in which numbers and dates are shown. */
@NullMarked
package org.moultwright.text;

import org.jspecify.annotations.NullMarked;
