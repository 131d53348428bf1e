/** What is written down of the room's instruments and alarms. */
@NullMarked
package org.moultwright.store.climate;

import org.jspecify.annotations.NullMarked;
