package org.moultwright.compute.rate;

import java.util.stream.Stream;
import org.moultwright.domain.AssumedTimings;
import org.moultwright.domain.Brood;
import org.moultwright.domain.RateForm;
import org.moultwright.domain.Timing;

/** How development is believed to depend on temperature before a brood has shown any. */
public final class BelievedRate {
    private BelievedRate() {}

    /** Development per day of a brood by its keeper's belief, else as assumed of its species; 1 at its reference temperature. */
    public static RateCurve of(Brood brood, AssumedTimings assumed) {
        return of(
                brood.timing()
                        .map(Timing::rate)
                        .orElseGet(() -> assumed.of(brood.taxon()).timing().rate()),
                assumed.general().timing().rate(),
                brood.referenceTemperatureCelsius());
    }

    /**
     * Development per day, 1 at the reference temperature.
     *
     * @param otherwise holds where the believed form has no development there; where neither has, any temperature
     *     counts as the reference
     */
    public static RateCurve of(RateForm believed, RateForm otherwise, double referenceCelsius) {
        return Stream.of(believed, otherwise)
                .map(RateCurve::of)
                .filter(curve -> curve.at(referenceCelsius) > 0)
                .findFirst()
                .map(curve -> curve.relativeTo(referenceCelsius))
                .orElse(celsius -> 1);
    }
}
