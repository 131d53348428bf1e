package org.moultwright.compute.rate;

import java.util.stream.Stream;
import org.moultwright.domain.Brood;
import org.moultwright.domain.RateForm;
import org.moultwright.domain.Timing;

/** How development is believed to depend on temperature before a brood has shown any. */
public final class BelievedRate {
    /** Rises from 11 °C and falls to nothing at 38 °C: an assumption, no source. */
    public static final RateForm GENERAL = new RateForm.Briere1(11, 38);

    private BelievedRate() {}

    /** Development per day of a brood by its keeper's belief, else the general one; 1 at its reference temperature. */
    public static RateCurve of(Brood brood) {
        return of(brood.timing().map(Timing::rate).orElse(GENERAL), brood.referenceTemperatureCelsius());
    }

    /** Development per day, 1 at the reference temperature; where the believed form has none there, at any. */
    public static RateCurve of(RateForm believed, double referenceCelsius) {
        return Stream.of(believed, GENERAL)
                .map(RateCurve::of)
                .filter(curve -> curve.at(referenceCelsius) > 0)
                .findFirst()
                .map(curve -> curve.relativeTo(referenceCelsius))
                .orElse(celsius -> 1);
    }
}
