package org.moultwright.workflow;

import org.moultwright.domain.Require;
import org.moultwright.domain.label.LabelDesign;
import org.moultwright.domain.label.LabelPart;

/**
 * What stands on one pot's label.
 *
 * @param code the pot's code, also held by the code square
 * @param taxon scientific name of the species, in full; empty where it is left off
 * @param line words more, commas between them, such as the day it became a sling, possibly empty
 * @param hasSquare whether it bears the code square
 */
public record PotLabel(String code, String taxon, String line, boolean hasSquare) {
    public PotLabel {
        Require.text("code", code);
    }

    /** A label with its code square. */
    public PotLabel(String code, String taxon, String line) {
        this(code, taxon, line, true);
    }

    /** A label with name and square as the design has them. */
    public static PotLabel of(LabelDesign design, String code, String taxon, String line) {
        return new PotLabel(code, design.has(LabelPart.NAME) ? taxon : "", line, design.has(LabelPart.SQUARE));
    }
}
