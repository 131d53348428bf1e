/** The broods, each as a ribbon over the calendar, with its story and its ledger; opening a sac. */
@NullMarked
package org.moultwright.ui.broods;

import org.jspecify.annotations.NullMarked;
