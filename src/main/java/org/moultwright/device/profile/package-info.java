/** Lines into values, by profiles declared in files that carry their own tests. */
@NullMarked
package org.moultwright.device.profile;

import org.jspecify.annotations.NullMarked;
