package org.moultwright.language;

import java.util.Locale;
import java.util.Set;

/**
 * What temperatures are shown and typed in. The conversion is exact: t/°F = 1.8 t/°C + 32 (NIST Special Publication 811,
 * 2008 edition, appendix B.8, table of factors: degree Fahrenheit to degree Celsius); a difference of 1 °C is one of
 * 1.8 °F.
 */
public enum TemperatureUnit {
    CELSIUS("°C", 1, 0),
    FAHRENHEIT("°F", 1.8, 32);

    /** Countries and territories that speak of air in °F: common practice, no source. */
    private static final Set<String> FAHRENHEIT_COUNTRIES = Set.of("US", "BS", "BZ", "KY", "PW", "FM", "MH", "LR");

    private final String symbol;
    private final double factor;
    private final double offset;

    TemperatureUnit(String symbol, double factor, double offset) {
        this.symbol = symbol;
        this.factor = factor;
        this.offset = offset;
    }

    /** What is usual where a keeper lives. */
    public static TemperatureUnit usual(Locale locale) {
        return FAHRENHEIT_COUNTRIES.contains(locale.getCountry()) ? FAHRENHEIT : CELSIUS;
    }

    /** "°C". */
    public String symbol() {
        return symbol;
    }

    public double shown(double celsius) {
        return factor * celsius + offset;
    }

    /** The temperature a shown number means, to a thousandth of a °C: finer than any number typed here. */
    public double celsius(double shown) {
        return rounded((shown - offset) / factor);
    }

    /** A difference, an uncertainty or a tolerance: without the offset of the scales. */
    public double shownApart(double celsiusApart) {
        return factor * celsiusApart;
    }

    public double celsiusApart(double shownApart) {
        return rounded(shownApart / factor);
    }

    private static double rounded(double celsius) {
        return Math.rint(1000 * celsius) / 1000;
    }
}
