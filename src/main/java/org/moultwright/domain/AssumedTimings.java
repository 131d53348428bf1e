package org.moultwright.domain;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The timings assumed of all species. One of them is general, with a median for every stage but the egg; the others
 * need not name each stage.
 *
 * @param all the first that fits holds
 */
public record AssumedTimings(List<AssumedTiming> all) {
    public AssumedTimings {
        all = List.copyOf(all);
        Optional<AssumedTiming> general =
                all.stream().filter(AssumedTiming::isGeneral).findFirst();
        Require.that(general.isPresent(), "assumed timings hold none that is general");
        for (Stage stage : Stage.values()) {
            Require.that(
                    stage == Stage.EGG
                            || general.get().timing().medianWarmDays().containsKey(stage),
                    "the general timing holds no median of " + stage.key());
        }
    }

    /** What holds where nothing is assumed of the species. */
    public AssumedTiming general() {
        return all.stream().filter(AssumedTiming::isGeneral).findFirst().orElseThrow();
    }

    /** What is assumed of a species: its own timing, else its genus's, else the general one. */
    public AssumedTiming of(String taxon) {
        return named(taxon).or(() -> named(genus(taxon))).orElseGet(this::general);
    }

    /** These, behind others that come first. */
    public AssumedTimings after(List<AssumedTiming> others) {
        List<AssumedTiming> both = new ArrayList<>(others);
        both.addAll(all);
        return new AssumedTimings(both);
    }

    private Optional<AssumedTiming> named(String name) {
        return all.stream()
                .filter(assumed -> assumed.taxon().equalsIgnoreCase(name) && !assumed.isGeneral())
                .findFirst();
    }

    private static String genus(String taxon) {
        return taxon.strip().split("\\s+", 2)[0];
    }
}
