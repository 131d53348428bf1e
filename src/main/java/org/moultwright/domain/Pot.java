package org.moultwright.domain;

import java.time.Instant;

/**
 * One animal's pot.
 *
 * @param code the pot's code, unique in a store
 * @param tray the tray its animal came from
 * @param potted when it went in
 * @param label what is written on the label beside the code, possibly empty
 * @param size how large the pot is, in the keeper's words, possibly empty
 */
public record Pot(String code, String tray, Instant potted, String label, String size) {
    public Pot {
        Require.text("code", code);
        Require.text("tray", tray);
    }

    /** A pot of which nobody wrote down how large it is. */
    public Pot(String code, String tray, Instant potted, String label) {
        this(code, tray, potted, label, "");
    }
}
