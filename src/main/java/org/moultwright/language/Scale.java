package org.moultwright.language;

/** How a number in a field relates to the one that is kept. */
public enum Scale {
    /** As it stands. */
    PLAIN,
    /** A temperature, kept in °C. */
    TEMPERATURE,
    /** A difference of temperatures, an uncertainty or a tolerance, kept in °C. */
    APART;

    /** What stands in the field. */
    public double shown(double kept) {
        return switch (this) {
            case PLAIN -> kept;
            case TEMPERATURE -> Degrees.unit().shown(kept);
            case APART -> Degrees.unit().shownApart(kept);
        };
    }

    /** What a number in the field means. */
    public double kept(double shown) {
        return switch (this) {
            case PLAIN -> shown;
            case TEMPERATURE -> Degrees.celsius(shown);
            case APART -> Degrees.celsiusApart(shown);
        };
    }

    /** A kept number as short as it can be said in the field. */
    public String words(double kept) {
        return Numbers.shortest(shown(kept), 3);
    }
}
