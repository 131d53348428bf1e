/** What the watch finds, above every screen: seen and heard across the room. */
@NullMarked
package org.moultwright.ui.alarm;

import org.jspecify.annotations.NullMarked;
