package org.moultwright.language;

/**
 * Temperatures as the keeper reads and types them. All that is kept, computed or written to a file is in °C; this is the
 * one place between it and the screen or paper.
 */
public final class Degrees {
    private static volatile TemperatureUnit unit = TemperatureUnit.CELSIUS;

    private Degrees() {}

    public static void use(TemperatureUnit chosen) {
        unit = chosen;
    }

    public static TemperatureUnit unit() {
        return unit;
    }

    /** "°C" or "°F". */
    public static String symbol() {
        return unit.symbol();
    }

    /** What stands behind a difference: "K", or "°F". */
    public static String apartSymbol() {
        return unit == TemperatureUnit.CELSIUS ? "K" : symbol();
    }

    /** "26.4 °C". */
    public static String words(double celsius, int decimals) {
        return number(celsius, decimals) + " " + symbol();
    }

    /** "26.4". */
    public static String number(double celsius, int decimals) {
        return Numbers.fixed(unit.shown(celsius), decimals);
    }

    /** "27" and "26.5", as short as it can be said. */
    public static String shortest(double celsius, int mostDecimals) {
        return Numbers.shortest(unit.shown(celsius), mostDecimals);
    }

    /** A difference of two temperatures: "0.3". */
    public static String apart(double celsiusApart, int decimals) {
        return Numbers.fixed(unit.shownApart(celsiusApart), decimals);
    }

    /** A difference with its sign: "+0.30". */
    public static String signedApart(double celsiusApart, int decimals) {
        return Numbers.signed(unit.shownApart(celsiusApart), decimals);
    }

    /** A difference with its unit: "0.3 °C". */
    public static String apartWords(double celsiusApart, int decimals) {
        return apart(celsiusApart, decimals) + " " + symbol();
    }

    /** What a typed number means. */
    public static double celsius(double shown) {
        return unit.celsius(shown);
    }

    /** What a typed difference means. */
    public static double celsiusApart(double shownApart) {
        return unit.celsiusApart(shownApart);
    }
}
