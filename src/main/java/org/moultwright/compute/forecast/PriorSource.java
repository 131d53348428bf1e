package org.moultwright.compute.forecast;

/** Where the belief came from that the evidence was held against. */
public enum PriorSource {
    /** The brood's own timing, as the keeper wrote it down. */
    FOLDER,
    /** The timing kept for its species. */
    TAXON,
    /** The general default, an assumption. */
    GENERAL,
    /** Learned from completed broods. */
    LEARNED
}
