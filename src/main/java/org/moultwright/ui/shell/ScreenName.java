package org.moultwright.ui.shell;

import org.kordamp.ikonli.Ikon;

/**
 * What a screen is known by before it is made.
 *
 * @param id names it for ever, such as {@code round}
 * @param word stands in the rail
 * @param icon stands over that word
 */
public record ScreenName(String id, String word, Ikon icon) {}
