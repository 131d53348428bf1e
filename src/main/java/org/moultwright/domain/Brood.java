package org.moultwright.domain;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * The offspring of one sac.
 *
 * @param code the keeper's own code, unique in a store
 * @param taxon scientific name of the species
 * @param zone where the keeper's days begin and end
 * @param laid when the sac was laid, as far as it is known
 * @param pulled when it was taken from its mother, if it was
 * @param stages the stages counted in this brood, in order, at least two
 * @param referenceTemperatureCelsius the temperature at which a day is one warm-day
 * @param timing what the keeper believes of its timing, if anything
 */
public record Brood(
        String code,
        String taxon,
        ZoneId zone,
        Optional<InstantRange> laid,
        Optional<Instant> pulled,
        List<Stage> stages,
        double referenceTemperatureCelsius,
        Optional<Timing> timing) {

    /** The reference temperature unless the keeper chooses another (common practice, no source). */
    public static final double DEFAULT_REFERENCE_CELSIUS = 27.0;

    public Brood {
        Require.text("code", code);
        Require.text("taxon", taxon);
        stages = stages.stream().distinct().sorted().toList();
        Require.that(stages.size() >= 2, "stages holds " + stages.size() + " but needs at least 2");
        Require.within("referenceTemperatureCelsius", referenceTemperatureCelsius, 5, 45);
    }

    /** This brood with another belief of its timing. */
    public Brood withTiming(Optional<Timing> other) {
        return new Brood(code, taxon, zone, laid, pulled, stages, referenceTemperatureCelsius, other);
    }

    /** This brood as taken from its mother at another time. */
    public Brood withPulled(Optional<Instant> other) {
        return new Brood(code, taxon, zone, laid, other, stages, referenceTemperatureCelsius, timing);
    }

    /** Whole days since the middle of the range it was laid in; empty where that is not known. */
    public OptionalLong daysSinceLaying(Instant then) {
        return laid.map(InstantRange::middle)
                .map(from -> OptionalLong.of(Duration.between(from, then).toDays()))
                .orElse(OptionalLong.empty());
    }

    /** The stage that ends the brood's time in trays. */
    public Stage lastStage() {
        return stages.get(stages.size() - 1);
    }
}
