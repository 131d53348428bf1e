package org.moultwright.ui.broods;

import org.moultwright.ui.shell.DeedLine;

/**
 * What every form about a sac works with.
 *
 * @param desk the screen's desk
 * @param begun keeps what is begun
 * @param deeds keeps what is done
 * @param close leaves the form
 */
record SacFormDesk(BroodsDesk desk, BegunForms begun, DeedLine deeds, Runnable close) {}
