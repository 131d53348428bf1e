/** Pot codes: how one is made, checked and read back from a scanner or a keyboard. */
@NullMarked
package org.moultwright.domain.code;

import org.jspecify.annotations.NullMarked;
