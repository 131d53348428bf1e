package org.moultwright.compute.rate;

import org.moultwright.domain.RateForm;
import org.moultwright.domain.Require;

/**
 * Development per unit of time as a function of temperature, never negative.
 *
 * <p>The unit is the curve's own, often 1/day; a curve {@link #relativeTo} a reference temperature is 1
 * there, so that its integral over days counts warm-days.
 */
@FunctionalInterface
public interface RateCurve {

    /** The rate at a temperature in °C, at least 0. */
    double at(double temperatureCelsius);

    /**
     * This curve divided by its value at the reference temperature.
     *
     * @throws IllegalArgumentException if nothing develops at the reference temperature
     */
    default RateCurve relativeTo(double referenceCelsius) {
        double reference = at(referenceCelsius);
        Require.that(
                reference > 0,
                "referenceCelsius is %s, where the rate is %s, but the rate there must be above 0"
                        .formatted(referenceCelsius, reference));
        return temperatureCelsius -> at(temperatureCelsius) / reference;
    }

    /**
     * This curve by straight lines between its values every 0.01 K from 0 to 45 °C, and itself outside: for the
     * many evaluations along years of readings. A smooth curve in use is met to 1e-6 of its value at 27 °C.
     */
    default RateCurve tabulated() {
        return new TabulatedRate(this);
    }

    /** The curve of a stored form, up to a constant factor. */
    static RateCurve of(RateForm form) {
        if (form instanceof RateForm.Linear linear) {
            return RateCurves.linear(1, linear.lowerCelsius());
        }
        if (form instanceof RateForm.Briere1 briere) {
            return RateCurves.briere1(1, briere.lowerCelsius(), briere.upperCelsius());
        }
        if (form instanceof RateForm.Lactin2 lactin) {
            return RateCurves.lactin2(lactin.rho(), lactin.maximumCelsius(), lactin.deltaCelsius(), lactin.lambda());
        }
        return RateCurves.table(((RateForm.Table) form).points());
    }
}
