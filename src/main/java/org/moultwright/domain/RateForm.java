package org.moultwright.domain;

import java.util.List;

/**
 * The form of a development rate's dependence on temperature, up to a constant factor.
 *
 * <p>The factor does not matter: rates are used relative to the rate at a brood's reference temperature.
 */
public sealed interface RateForm {

    /** The name this form has in files. */
    String key();

    /** Proportional to the degrees above a threshold; nothing below it. */
    record Linear(double lowerCelsius) implements RateForm {
        @Override
        public String key() {
            return "linear";
        }
    }

    /** Brière et al. 1999, first form: T (T − lower) √(upper − T) between the two limits, nothing outside. */
    record Briere1(double lowerCelsius, double upperCelsius) implements RateForm {
        public Briere1 {
            Require.that(
                    lowerCelsius < upperCelsius,
                    "lowerCelsius " + lowerCelsius + " must be below upperCelsius " + upperCelsius);
        }

        @Override
        public String key() {
            return "briere1";
        }
    }

    /** Lactin et al. 1995, second form: exp(ρT) − exp(ρTm − (Tm − T)/Δ) + λ. */
    record Lactin2(double rho, double maximumCelsius, double deltaCelsius, double lambda) implements RateForm {
        public Lactin2 {
            Require.that(deltaCelsius > 0, "deltaCelsius is " + deltaCelsius + " but must be above 0");
        }

        @Override
        public String key() {
            return "lactin2";
        }
    }

    /** Straight lines between measured points, level outside them. */
    record Table(List<Point> points) implements RateForm {
        public Table {
            points = List.copyOf(points);
            Require.that(points.size() >= 2, "points holds " + points.size() + " but needs at least 2");
            for (int i = 1; i < points.size(); i++) {
                Require.that(
                        points.get(i).temperatureCelsius() > points.get(i - 1).temperatureCelsius(),
                        "points must stand in order of rising temperature");
            }
        }

        @Override
        public String key() {
            return "table";
        }
    }

    /** One measured rate, in any unit, the same for the whole table. */
    record Point(double temperatureCelsius, double rate) {
        public Point {
            Require.within("rate", rate, 0, Double.MAX_VALUE);
        }
    }
}
