package org.moultwright.workflow;

import org.moultwright.domain.Require;

/**
 * What stands on one pot's label.
 *
 * @param code the pot's code, also held by the code square
 * @param taxon scientific name of the species, in full
 * @param line one line more, such as the day it became a sling, possibly empty
 */
public record PotLabel(String code, String taxon, String line) {
    public PotLabel {
        Require.text("code", code);
        Require.text("taxon", taxon);
    }
}
