package org.moultwright.domain;

import java.util.Map;
import java.util.TreeMap;

/**
 * What is assumed of the timing of a species or a genus, or of any brood, where its keeper believes nothing of it.
 *
 * @param taxon scientific name of the species or genus; {@link #GENERAL} for all that have none of their own
 * @param timing what is assumed
 * @param stageSd standard deviation of the log of each stage's own length
 * @param sources by figure, where it is from: a source, or that there is none
 * @param file the file it stands in, as the keeper knows it
 */
public record AssumedTiming(String taxon, Timing timing, double stageSd, Map<String, String> sources, String file) {
    /** Stands for all species without an assumption of their own. */
    public static final String GENERAL = "general";

    public AssumedTiming {
        Require.text("taxon", taxon);
        Require.within("stageSd", stageSd, 0, 2);
        Require.that(!timing.medianWarmDays().isEmpty(), "timing of '" + taxon + "' holds no median");
        sources = Map.copyOf(new TreeMap<>(sources));
    }

    public boolean isGeneral() {
        return taxon.equals(GENERAL);
    }
}
