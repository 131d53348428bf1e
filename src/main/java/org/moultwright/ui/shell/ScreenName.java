package org.moultwright.ui.shell;

import org.moultwright.ui.control.Sign;

/**
 * What a screen is known by before it is made.
 *
 * @param id names it for ever, such as {@code round}
 * @param word stands in the rail
 * @param icon stands over that word
 */
public record ScreenName(String id, String word, Sign icon) {}
