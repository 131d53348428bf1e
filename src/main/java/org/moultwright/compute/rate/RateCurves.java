package org.moultwright.compute.rate;

import java.util.List;
import org.moultwright.domain.RateForm;

/**
 * The development-rate curves in use, each by its published formula, cut off at 0. T is in °C.
 *
 * <p>Below its lower and above its upper limit a curve that has them is 0.
 */
public final class RateCurves {
    private RateCurves() {}

    /** slope (T − lower). */
    public static RateCurve linear(double slope, double lowerCelsius) {
        return t -> Math.max(0, slope * (t - lowerCelsius));
    }

    /** Brière et al. 1999, first form: a T (T − lower) √(upper − T). */
    public static RateCurve briere1(double a, double lowerCelsius, double upperCelsius) {
        return t -> isInside(t, lowerCelsius, upperCelsius)
                ? Math.max(0, a * t * (t - lowerCelsius) * Math.sqrt(upperCelsius - t))
                : 0;
    }

    /** Brière et al. 1999, second form: a T (T − lower) (upper − T)^(1/m). */
    public static RateCurve briere2(double a, double lowerCelsius, double upperCelsius, double m) {
        return t -> isInside(t, lowerCelsius, upperCelsius)
                ? Math.max(0, a * t * (t - lowerCelsius) * Math.pow(upperCelsius - t, 1 / m))
                : 0;
    }

    /** Lactin et al. 1995, second form: exp(ρT) − exp(ρTm − (Tm − T)/Δ) + λ. */
    public static RateCurve lactin2(double rho, double maximumCelsius, double deltaCelsius, double lambda) {
        return t -> Math.max(0, decliningExponential(t, rho, maximumCelsius, deltaCelsius) + lambda);
    }

    /** Logan et al. 1976, equation 6: ψ [exp(ρT) − exp(ρTm − (Tm − T)/Δ)]. */
    public static RateCurve logan6(double psi, double rho, double maximumCelsius, double deltaCelsius) {
        return t -> Math.max(0, psi * decliningExponential(t, rho, maximumCelsius, deltaCelsius));
    }

    /**
     * Wang et al. 1982, as Li &amp; Jackson 1996 use it for spiders:
     * K/(1 + e^(−ρ(T−T0))) · (1 − e^(−(T−lower)/a)) · (1 − e^(−(upper−T)/a)).
     */
    public static RateCurve wang(
            double k, double rho, double optimumCelsius, double lowerCelsius, double upperCelsius, double a) {
        return t -> isInside(t, lowerCelsius, upperCelsius)
                ? k
                        / (1 + Math.exp(-rho * (t - optimumCelsius)))
                        * -Math.expm1(-(t - lowerCelsius) / a)
                        * -Math.expm1(-(upperCelsius - t) / a)
                : 0;
    }

    /** Straight lines between points in order of rising temperature, level outside them. */
    public static RateCurve table(List<RateForm.Point> points) {
        double[] temperaturesCelsius =
                points.stream().mapToDouble(RateForm.Point::temperatureCelsius).toArray();
        double[] rates = points.stream().mapToDouble(RateForm.Point::rate).toArray();
        return t -> interpolated(temperaturesCelsius, rates, t);
    }

    private static boolean isInside(double t, double lower, double upper) {
        return t > lower && t < upper;
    }

    private static double decliningExponential(double t, double rho, double maximum, double delta) {
        return Math.exp(rho * t) - Math.exp(rho * maximum - (maximum - t) / delta);
    }

    private static double interpolated(double[] xs, double[] ys, double x) {
        int last = xs.length - 1;
        if (x <= xs[0]) {
            return ys[0];
        }
        if (x >= xs[last]) {
            return ys[last];
        }
        int right = 1;
        while (xs[right] < x) {
            right++;
        }
        double share = (x - xs[right - 1]) / (xs[right] - xs[right - 1]);
        return ys[right - 1] + share * (ys[right] - ys[right - 1]);
    }
}
