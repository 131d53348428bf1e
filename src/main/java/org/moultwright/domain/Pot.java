package org.moultwright.domain;

import java.time.Instant;

/**
 * One animal's pot.
 *
 * @param code the pot's code, unique in a store
 * @param tray the tray its animal came from
 * @param potted when it went in
 * @param label what is written on the label beside the code, possibly empty
 */
public record Pot(String code, String tray, Instant potted, String label) {
    public Pot {
        Require.text("code", code);
        Require.text("tray", tray);
    }
}
